import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/spray-water-per-year';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const subjects = ['pre-rinse', 'soiled-table'];
const of = (part: string, gallons: number) => ({ part, subjects, value: toSI(gallons, 'gal'), notes: '200 min a day' });
const daysPlan = (daysPerYear: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    plan.demand.daysPerYear = daysPerYear;
    change(plan);
  });

/** EPA, WaterSense at Work, equation 4-16: 116,800 gal a year with 1.6 gpm, 93,440 with 1.28; classes of 10 CFR 431.266. */
describeFigure(rule, [
  {
    name: '365 days',
    plan: daysPlan(365),
    expect: [of('strong', 93_440), of('middle', 87_600), of('light', 73_000), of('older', 116_800)],
  },
  { name: 'the days are not known', plan: daysPlan(null), expect: [{ subjects, value: null, asks: 'demand.daysPerYear' }] },
  {
    name: 'a sink without a spray',
    plan: daysPlan(365, ({ tables }) => {
      for (const fitting of tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'sink') fitting.spray = false;
    }),
    expect: [],
  },
]);
