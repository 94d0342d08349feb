import { rule } from '../../../../src/topics/capacity/figures/rate-with-buffer';
import { describeFigure } from '../../../support/figureCases';
import { tableOf } from '../../../support/linePlan';
import { rushPlan } from '../../../support/rushPlans';

/** Landings of the line hold three racks at 20 in. */
const scrapPlan = (scrapSeconds: number | null, change: Parameters<typeof rushPlan>[0] = () => {}) =>
  rushPlan((plan) => {
    plan.demand.scrapSeconds = scrapSeconds;
    change(plan);
  });

describeFigure(rule, [
  {
    // Equal rates, three places: (N + 2)/(N + 3) = 5/6.
    name: '60 s a rack by hand and by machine',
    plan: scrapPlan(60),
    expect: [{ subjects: ['machine'], value: 50, notes: 'the slower of the two, 60 an hour' }],
  },
  {
    // No place between: 2/3.
    name: 'racks as long as the table: none stands between',
    plan: scrapPlan(
      60,
      (plan) => void (tableOf(plan, 'soiled').fittings[0] = { ...tableOf(plan, 'soiled').fittings[0], length: 400 } as never),
    ),
    expect: [{ subjects: ['machine'], value: 40 }],
  },
  {
    // 60 and 40 an hour; 5 places give 39.187946, three by the same formula less.
    name: '90 s a rack by hand',
    plan: scrapPlan(90),
    expect: [{ subjects: ['machine'], value: 40 * (1 - (1 - 1.5) / (1 - 1.5 ** 6)), notes: '40 an hour' }],
  },
  {
    name: 'nobody knows how long scrapping takes',
    plan: scrapPlan(null),
    expect: [{ subjects: ['machine'], value: null, asks: 'demand.scrapSeconds' }],
  },
  { name: 'no soiled table', plan: scrapPlan(60, (plan) => void (plan.tables = [tableOf(plan, 'clean')])), expect: [] },
]);
