import { rule } from '../../../../src/topics/people/figures/way-width';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThingBetween } from '../../../support/roomPlan';

const subjects = ['machine'];
const door = (mm: number) => ({ part: 'door', subjects, value: mm / 1000 });
/** The passage is found to a millimetre. */
const aisle = (mm: number, notes: RegExp) => ({ part: 'aisle', subjects, value: mm / 1000, within: 0.001, notes });

/** The room is 4049.5 from back to front; two bodies across it leave a gap between the door and the machine. */
const gapOf = (width: number) =>
  linePlan({}, (plan) => {
    addThingBetween(plan, 'upper', [2000, 767], [2300, 2000]);
    addThingBetween(plan, 'lower', [2000, 2000 + width], [2300, 4049.5]);
  });

describeFigure(rule, [
  // FDA/CFP Food Establishment Plan Review Guide 2000, III Part 6 (read): 36 in.
  { name: 'free floor: 36 in or wider', plan: linePlan(), expect: [door(914), aisle(914.4, /not told apart/)] },
  { name: 'a gap of 800', plan: gapOf(800), expect: [door(914), aisle(800, /narrowest/)] },
  // 29 CFR 1910.36(g)(2) (read): 28 in.
  { name: 'a gap of 28 in', plan: gapOf(711.2), expect: [door(914), aisle(711.2, /narrowest/)] },
  { name: 'shut: the 5 mm that the table stands off its wall', plan: gapOf(0), expect: [door(914), aisle(5, /narrowest/)] },
  {
    name: 'no door',
    plan: linePlan({}, (plan) => {
      plan.room.openings = [];
    }),
    expect: [{ subjects, value: null, asks: 'room.openings' }],
  },
  {
    name: 'no place to stand',
    plan: linePlan({}, (plan) => {
      plan.tables = [];
    }),
    expect: [],
  },
]);
