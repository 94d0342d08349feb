import { check } from '../../../../src/topics/cleanliness/checks/rim';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

const rim = (height: number | null) => linePlan({}, (plan) => void (tableOf(plan, 'clean').make.rim = height));
const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: number | null): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit: 76.2,
});
const metricRim = (height: number) =>
  linePlan({}, (plan) => {
    plan.settings.units = 'metric';
    tableOf(plan, 'clean').make.rim = height;
  });
const metric = (...told: Parameters<typeof of>): ExpectedFinding => ({ ...of(...told), limit: 75 });
const soiled = of('soiled-table', 'clear', 76.2);

/** 3 in: UFGS 11400N §2.4.2.4 (read). */
describeCheck(check, [
  { name: '3 in', plan: rim(76.2), expect: [soiled, of('clean-table', 'clear', 76.2)] },
  {
    name: '2 in',
    plan: rim(50.8),
    expect: [{ ...of('clean-table', 'watch', 50.8), says: 'The clean table has a rim of 2″; 3″ keeps the water on it.' }, soiled],
  },
  {
    name: 'none',
    plan: rim(0),
    expect: [{ ...of('clean-table', 'watch', 0), says: 'The clean table has no rim; 3″ keeps the water on it.' }, soiled],
  },
  {
    name: '75 mm in a plan of millimetres, as the guide prints it',
    plan: metricRim(75),
    expect: [metric('soiled-table', 'clear', 76.2), metric('clean-table', 'clear', 75)],
  },
  { name: '74 mm', plan: metricRim(74), expect: [metric('clean-table', 'watch', 74), metric('soiled-table', 'clear', 76.2)] },
  { name: 'not known', plan: rim(null), expect: [{ ...of('clean-table', 'ask', null), asks: 'tables.1.make.rim' }, soiled] },
]);
