import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/rinse-water-per-day';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];

/** 280 racks a day, the default of a public workbook for a door machine; 0.89 gal a rack: 90,958 gal in 365 days (secondary). */
const KNOWN: Partial<Plan['demand']> = { mealsPerDay: 700, piecesPerMeal: 8, piecesPerRack: 20 };
const demandPlan = (change: Partial<Plan['demand']>, edit: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ rinseWaterL: fromSI(toSI(0.89, 'gal'), 'L') }, (plan) => {
    Object.assign(plan.demand, KNOWN, change);
    edit(plan);
  });

const value = toSI(90_958 / 365, 'gal');

describeFigure(rule, [
  { name: '280 racks a day', plan: demandPlan({}), expect: [{ subjects, value, notes: 'Rinse water alone' }] },
  ...(['mealsPerDay', 'piecesPerMeal', 'piecesPerRack'] as const).map((field) => ({
    name: `${field} is not known`,
    plan: demandPlan({ [field]: null }),
    expect: [{ subjects, value: null, asks: `demand.${field}` }],
  })),
  {
    name: 'two machines: each as if it did all',
    plan: demandPlan({}, ({ machines }) => {
      const [first] = machines;
      if (first !== undefined) machines.push({ ...first, id: 'other', x: first.x + 20_000 });
    }),
    expect: [
      { subjects, value, notes: 'all the ware' },
      { subjects: ['other'], value, notes: 'all the ware' },
    ],
  },
  {
    name: 'more racks than are counted',
    plan: demandPlan({ mealsPerDay: 1e6, piecesPerMeal: 100, piecesPerRack: 1 }),
    expect: [{ subjects, value: null, refuses: 'racks is' }],
  },
]);
