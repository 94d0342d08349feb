import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/air/figures/air-changes';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf, setWalls } from '../../../support/roomPlan';

const FOOT = 304.8;

/** A room of 20 × 14 × 12 ft, 3360 ft³, with so much drawn out and blown in. */
const room = (exhaustCfm: number | null, makeUpCfm: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    setWalls(
      plan,
      [
        [0, 0],
        [20 * FOOT, 0],
        [20 * FOOT, 14 * FOOT],
        [0, 14 * FOOT],
      ],
      { wall: 'wall-0', from: 1000 },
    );
    plan.room.ceilingHeight = 12 * FOOT;
    hoodOf(plan).exhaust = exhaustCfm === null ? null : toSI(exhaustCfm, 'cfm');
    Object.assign(plan.air, { roomExhaust: 0, makeUp: makeUpCfm === null ? null : toSI(makeUpCfm, 'cfm') });
    change(plan);
  });
const open = (asks: string) => [{ subjects: [], value: null, asks }];

// USAF training text: a room of 3360 ft³; VA manual: 10 an hour, UFC of 2004: 20 to 30.
describeFigure(rule, [
  {
    name: '3360 cfm: one in a minute, 60 an hour',
    plan: room(3360, 3024),
    expect: [{ subjects: [], value: 60, notes: /10 an hour or more of supply air, military criteria of 2004 20 to 30/ }],
  },
  { name: '1120 cfm: 20 an hour', plan: room(1120, 1000), expect: [{ subjects: [], value: 20 }] },
  { name: 'more blown in than drawn out', plan: room(1000, 1120), expect: [{ subjects: [], value: 20 }] },
  {
    name: 'the ceiling is not known',
    plan: room(1120, 1000, (plan) => void (plan.room.ceilingHeight = null)),
    expect: open('room.ceilingHeight'),
  },
  { name: 'the exhaust is not known', plan: room(null, 1000), expect: open('hoods.0.exhaust') },
  { name: 'the make-up air is not known', plan: room(1120, null), expect: open('air.makeUp') },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);
