import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/water-per-day';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];
const TANK = { volume: 0.03, heater: 3000 };

/** 280 racks a day at 0.89 gal: 90,958 gal in 365 days (secondary), and a tank of 30 L each day. */
const dayPlan = (tank: typeof TANK | null, change: Partial<Plan['demand']> = {}, edit: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ rinseWaterL: fromSI(toSI(0.89, 'gal'), 'L'), tank }, (plan) => {
    Object.assign(plan.demand, { mealsPerDay: 700, piecesPerMeal: 8, piecesPerRack: 20, ...change });
    edit(plan);
  });

const value = toSI(90_958 / 365, 'gal') + 0.03;

describeFigure(rule, [
  { name: '280 racks and one filling', plan: dayPlan(TANK), expect: [{ subjects, value, notes: 'filled once' }] },
  { name: 'without a tank its rinse water is all', plan: dayPlan(null), expect: [] },
  ...(['mealsPerDay', 'piecesPerMeal', 'piecesPerRack'] as const).map((field) => ({
    name: `${field} is not known`,
    plan: dayPlan(TANK, { [field]: null }),
    expect: [{ subjects, value: null, asks: `demand.${field}` }],
  })),
  {
    name: 'two machines: each as if it did all',
    plan: dayPlan(TANK, {}, ({ machines }) => {
      const [first] = machines;
      if (first !== undefined) machines.push({ ...first, id: 'other', x: first.x + 20_000 });
    }),
    expect: [
      { subjects, value, notes: 'all the ware' },
      { subjects: ['other'], value, notes: 'all the ware' },
    ],
  },
]);
