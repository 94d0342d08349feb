import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/rack-lift';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

/** 60 meals in an hour: 18 racks, 0.3 lifts a minute; a deck at 34 in and a shelf at 6 in, 28 in below. */
const FM = 1 - (0.03 * (0.3 - 0.2)) / 0.3;
const AM = 1 - 0.0032 * 30;
/** By the metric constants; all in inches. */
const limitOf = (before: number, above: number, travel: number) =>
  23 * (25 / (before * 2.54)) * (1 - 0.003 * Math.abs(above * 2.54 - 75)) * (0.82 + 4.5 / (travel * 2.54)) * AM * FM;
const DECK = limitOf(18, 34, 28);
const SHELF = limitOf(20, 6, 28);

const of = (
  part: 'deck' | 'shelf',
  verdict: ExpectedFinding['verdict'],
  measured: number,
  limit = part === 'deck' ? DECK : SHELF,
): ExpectedFinding => ({
  part,
  verdict,
  subjects: ['machine', 'clean-shelving'],
  measured,
  limit,
});
const rack = (rackMass: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    plan.demand.rackMass = rackMass;
    change(plan);
  });
/** From a deck at 34 in to a shelf of 12 in over a table of 30 in, 60 in above the floor: 26 in higher, hands 18 in before the ankles. */
const OVERSHELF = limitOf(18, 60, 26);
const overshelf = (rackMass: number, height: number, depth = 304.8) =>
  rack(
    rackMass,
    (plan) => void tableOf(plan, 'clean').fittings.push({ id: 'shelf', kind: 'overshelf', at: 800, length: 600, depth, height }),
  );
const onShelf = (verdict: ExpectedFinding['verdict'], measured: number, limit: number): ExpectedFinding => ({
  part: 'overshelf',
  verdict,
  subjects: ['machine', 'shelf', 'clean-table'],
  measured,
  limit,
});
const ask = (asks: string): ExpectedFinding => ({
  verdict: 'ask',
  subjects: ['machine', 'clean-shelving'],
  measured: null,
  limit: null,
  asks,
});

/** DHHS/NIOSH 94-110 (read; Table 5 secondary). */
describeCheck(check, [
  { name: '15 lb', plan: rack(toSI(15, 'lb')), expect: [of('deck', 'clear', toSI(15, 'lb')), of('shelf', 'clear', toSI(15, 'lb'))] },
  {
    name: '20 lb: too much for the lowest shelf',
    plan: rack(toSI(20, 'lb')),
    expect: [
      {
        ...of('shelf', 'watch', toSI(20, 'lb')),
        says: 'A loaded rack of 20 lb against 16.2 lb when setting it down on the lowest shelf, lifting index 1.24. Load racks less, raise the shelf, use a dolly of the deck’s height, or lift by two.',
      },
      of('deck', 'clear', toSI(20, 'lb')),
    ],
  },
  {
    name: '25 lb: too much for either',
    plan: rack(toSI(25, 'lb')),
    expect: [of('deck', 'watch', toSI(25, 'lb')), of('shelf', 'watch', toSI(25, 'lb'))],
  },
  {
    name: 'mass not known',
    plan: rack(null),
    expect: [
      { ...ask('demand.rackMass'), part: 'deck', limit: DECK },
      { ...ask('demand.rackMass'), part: 'shelf', limit: SHELF },
    ],
  },
  {
    name: 'lowest shelf not known',
    plan: rack(7, ({ things }) => {
      if (things[0] !== undefined) things[0].clearBelow = null;
    }),
    expect: [ask('things.0.clearBelow')],
  },
  { name: 'peak not known', plan: rack(7, ({ demand }) => void (demand.peakMeals = null)), expect: [ask('demand.peakMeals')] },
  {
    name: 'deck not surveyed',
    plan: rack(7, (plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight: null, fall: 1 / 48 })),
    expect: [ask('tables.1.deck.jointHeight')],
  },
  {
    name: 'an overshelf of 12 in over the clean table, 5 ft above the floor',
    plan: overshelf(toSI(15, 'lb'), 1524),
    expect: [
      of('deck', 'clear', toSI(15, 'lb')),
      of('shelf', 'clear', toSI(15, 'lb')),
      {
        ...onShelf('clear', toSI(15, 'lb'), OVERSHELF),
        says: 'A loaded rack of 15 lb against 16.9 lb when lifting it to the overshelf, lifting index 0.89; it is 11 ⁹⁄₁₆″ above a short person’s shoulder; in a hot, humid room less.',
      },
    ],
  },
  {
    name: '18 lb to the same',
    plan: overshelf(toSI(18, 'lb'), 1524),
    expect: [of('shelf', 'watch', toSI(18, 'lb')), onShelf('watch', toSI(18, 'lb'), OVERSHELF), of('deck', 'clear', toSI(18, 'lb'))],
  },
  {
    name: 'a shelf too shallow for a rack holds none',
    plan: overshelf(toSI(15, 'lb'), 1524, 250),
    expect: [of('deck', 'clear', toSI(15, 'lb')), of('shelf', 'clear', toSI(15, 'lb'))],
  },
  { name: 'no storage to lift to', plan: rack(7, ({ things }) => void things.splice(0, 1)), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
