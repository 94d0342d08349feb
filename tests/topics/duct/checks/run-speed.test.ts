import { check } from '../../../../src/topics/duct/checks/run-speed';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';
import { ventSheet } from '../../../support/runPlans';

/** A run of a square metre of duct in hundredths: 0.2 × 0.1 m, at so many feet a minute. */
const at = (fpm: number | null) =>
  linePlan({ family: ventSheet({ airflow: null }) }, (plan) => {
    Object.assign(runOf(plan).duct, { sides: { width: 200, height: 100 }, airflow: fpm === null ? null : toSI(fpm, 'fpm') * 0.02 });
  });
const found = (verdict: ExpectedFinding['verdict'], fpm: number, limit: number): ExpectedFinding => ({
  verdict,
  subjects: ['run', 'machine'],
  measured: toSI(fpm, 'fpm'),
  limit: toSI(limit, 'fpm'),
});

// Handbook row of dishwasher exhaust ducts, 1,500 to 2,200 fpm, and of ducts for vapours, 1,000 to 2,000: within both.
describeCheck(check, [
  { name: 'just fast enough', plan: at(1500), expect: [found('clear', 1500, 1500)] },
  { name: 'as fast as both rows let it', plan: at(2000), expect: [found('clear', 2000, 2000)] },
  {
    name: 'slow',
    plan: at(1400),
    expect: [
      {
        ...found('watch', 1400, 1500),
        says: 'In the run the air goes 1400 fpm, slower than the 1500 fpm to 2000 fpm that carry vapour. Take a narrower duct, or more air.',
      },
    ],
  },
  { name: 'fast', plan: at(2100), expect: [found('watch', 2100, 2000)] },
  {
    name: 'the airflow is not known',
    plan: at(null),
    expect: [{ verdict: 'ask', subjects: ['run', 'machine'], measured: null, asks: 'runs.0.duct.airflow' }],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
