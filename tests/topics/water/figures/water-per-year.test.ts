import { rule } from '../../../../src/topics/water/figures/water-per-year';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { CONVENTIONAL, yearPlan } from '../../../support/yearPlans';

const subjects = ['machine'];
const FIELDS = ['mealsPerDay', 'piecesPerMeal', 'piecesPerRack', 'daysPerYear'] as const;

/** EPA, WaterSense at Work, equation 4-22: gallons a rack · racks a day · days; 29,120 racks a year. */
describeFigure(rule, [
  { name: 'the conventional machine', plan: yearPlan(CONVENTIONAL), expect: [{ subjects, value: toSI(37_565, 'gal'), notes: null }] },
  { name: '0.89 gal a rack', plan: yearPlan(0.89), expect: [{ subjects, value: toSI(25_916.8, 'gal') }] },
  {
    name: 'and a tank of 30 L, filled on 364 days',
    plan: yearPlan(0.89, { tank: { volume: 0.03, heater: 3000 } }),
    expect: [{ subjects, value: toSI(25_916.8, 'gal') + 10.92, notes: 'once a day' }],
  },
  ...FIELDS.map((field) => ({
    name: `${field} is not known`,
    plan: yearPlan(0.89, {}, ({ demand }) => void (demand[field] = null)),
    expect: [{ subjects, value: null, asks: `demand.${field}` }],
  })),
]);
