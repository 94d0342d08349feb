import { createPlan, type Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/racks-needed-in-peak';
import { describeFigure } from '../../../support/figureCases';
import { DEMAND } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const demandPlan = (change: Partial<Plan['demand']>): Plan => linePlan({}, (plan) => void Object.assign(plan.demand, DEMAND, change));
const asks = (field: keyof Plan['demand']) => ({
  name: `${field} is not known`,
  plan: demandPlan({ [field]: null }),
  expect: [{ subjects: [], value: null, asks: `demand.${field}` }],
});

describeFigure(rule, [
  {
    // Shares and pieces from food-service layout texts, from memory.
    name: '120 guests an hour, 6 pieces, 20 a rack',
    plan: demandPlan({}),
    expect: [
      { part: 'ware', subjects: [], value: 36 },
      { part: 'rated', subjects: [], value: 51.43, within: 0.01, notes: 'from memory' },
    ],
  },
  {
    // UFC 4-740-12AN, 3-2.3: 10 persons a minute pass a cafeteria line.
    name: 'a cafeteria line for half an hour',
    plan: demandPlan({ peakMeals: 300, peakMinutes: 30 }),
    expect: [
      { part: 'ware', subjects: [], value: 180 },
      { part: 'rated', subjects: [], value: 180 / 0.7 },
    ],
  },
  ...(['peakMeals', 'peakMinutes', 'piecesPerMeal', 'piecesPerRack'] as const).map(asks),
  {
    name: 'more guests than any room',
    plan: demandPlan({ peakMeals: 30_000 }),
    expect: ['ware', 'rated'].map((part) => ({ part, subjects: [], value: null, refuses: 'guestsPerH is 30000' })),
  },
  { name: 'no machine', plan: { ...createPlan(), demand: DEMAND }, expect: [] },
]);
