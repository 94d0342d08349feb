import { rule } from '../../src/figures/rules/lifting-index';
import { createPlan, type Plan } from '../../src/plan';
import { toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';

const subjects = ['machine', 'clean-shelving'];
const demand = (change: Partial<Plan['demand']>) => linePlan({}, (plan) => void Object.assign(plan.demand, change));
/** As for the limit: 0.99 for 0.3 lifts a minute. */
const COMMON = (0.82 + 1.8 / 28) * (1 - 0.0032 * 30) * 0.99;
const [DECK, SHELF] = [51 * (10 / 18) * 0.97 * COMMON, 51 * (10 / 20) * 0.82 * COMMON];

/** DHHS/NIOSH 94-110: LI = load / RWL (W-L1, read). */
describeFigure(rule, [
  {
    name: '20 lb',
    plan: demand({ rackMass: toSI(20, 'lb') }),
    expect: [
      { part: 'deck', subjects, value: 20 / DECK },
      { part: 'shelf', subjects, value: 20 / SHELF },
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
    // Above 70 in nobody should lift: a shelf at 71 in.
    name: 'a lowest shelf out of reach',
    plan: linePlan({}, ({ things }) => {
      if (things[0] !== undefined) things[0].clearBelow = 71 * 25.4;
    }),
    expect: [
      { part: 'deck', subjects, value: 7 / toSI(51 * (10 / 18) * 0.97 * (0.82 + 1.8 / 37) * (1 - 0.0032 * 30) * 0.99, 'lb') },
      { part: 'shelf', subjects, value: null, refuses: 'nobody should lift so' },
    ],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
