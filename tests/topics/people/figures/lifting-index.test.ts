import { createPlan, type Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/people/figures/lifting-index';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine', 'clean-shelving'];
const demand = (change: Partial<Plan['demand']>) => linePlan({}, (plan) => void Object.assign(plan.demand, change));
/** As for the limit: 0.99 for 0.3 lifts a minute. */
const COMMON = (1 - 0.0032 * 30) * 0.99;
const distance = (inches: number) => 0.82 + 4.5 / (inches * 2.54);
/** By the metric constants: a deck at 34 in, hands 18 in before the ankles; a shelf at 6 in, 20 in. */
const DECK_REACH = 23 * (25 / (18 * 2.54)) * (1 - 0.003 * (34 * 2.54 - 75)) * COMMON;
const DECK = DECK_REACH * distance(28);
const SHELF = 23 * (25 / (20 * 2.54)) * (1 - 0.003 * (75 - 6 * 2.54)) * COMMON * distance(28);
const MASS = toSI(20, 'lb');

/** DHHS/NIOSH 94-110: LI = load / RWL (read). */
describeFigure(rule, [
  {
    name: '20 lb',
    plan: demand({ rackMass: toSI(20, 'lb') }),
    expect: [
      { part: 'deck', subjects, value: MASS / DECK },
      { part: 'shelf', subjects, value: MASS / SHELF },
    ],
  },
  {
    name: 'the rack is not weighed',
    plan: demand({ rackMass: null }),
    expect: ['deck', 'shelf'].map((part) => ({ part, subjects, value: null, asks: 'demand.rackMass' })),
  },
  {
    name: 'the peak is not known',
    plan: demand({ piecesPerRack: null }),
    expect: [{ subjects, value: null, asks: 'demand.piecesPerRack' }],
  },
  {
    // Above 175 cm nobody should lift: a shelf at 71 in.
    name: 'a lowest shelf out of reach',
    plan: linePlan({}, ({ things }) => {
      if (things[0] !== undefined) things[0].clearBelow = 71 * 25.4;
    }),
    expect: [
      { part: 'deck', subjects, value: 7 / (DECK_REACH * distance(37)) },
      { part: 'shelf', subjects, value: null, refuses: 'nobody should lift so' },
    ],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
