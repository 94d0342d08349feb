import { rule } from '../../../../src/topics/duct/figures/run-speed';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, ownDataSheet } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';
import { runPlan, ventSheet } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;

describeFigure(rule, [
  {
    // Velocity-pressure sheet (read): 390 cfm in a duct of 4.00 in are 4467 fpm.
    name: '390 cfm in 4 in',
    plan: linePlan({ family: ventSheet({ airflow: null }) }, (plan) => {
      Object.assign(runOf(plan), { diameter: 101.6 });
      runOf(plan).duct.airflow = toSI(390, 'cfm');
    }),
    expect: [{ subjects, value: toSI(4467, 'fpm'), within: 0.002 * toSI(4467, 'fpm') }],
  },
  {
    name: 'as the data sheet needs it, 0.2 m³/s',
    plan: runPlan(UP, { airflow: null }),
    expect: [{ subjects, value: 0.2 / (Math.PI * 0.0889 ** 2) }],
  },
  {
    name: 'more in the plan than the sheet needs',
    plan: runPlan(UP, { airflow: 0.25 }),
    expect: [{ subjects, value: 0.25 / (Math.PI * 0.0889 ** 2) }],
  },
  {
    name: 'less in the plan than the sheet needs',
    plan: runPlan(UP, { airflow: 0.1 }),
    expect: [{ subjects, value: 0.2 / (Math.PI * 0.0889 ** 2) }],
  },
  {
    name: 'rectangular, on its true area',
    plan: runPlan(UP, { sides: { width: 250, height: 100 } }),
    expect: [{ subjects, value: 8 }],
  },
  {
    name: 'flatter than the equal diameter holds for',
    plan: runPlan(UP, { sides: { width: 900, height: 100 } }),
    expect: [{ subjects, value: null, refuses: 'at most 8 times' }],
  },
  {
    name: 'no airflow known',
    plan: linePlan({ family: ventSheet({ airflow: null }) }, (plan) => void (runOf(plan).duct.airflow = null)),
    expect: [{ subjects, value: null, asks: 'runs.0.duct.airflow' }],
  },
  { name: 'no run', plan: linePlan({ family: ownDataSheet({}) }), expect: [] },
]);
