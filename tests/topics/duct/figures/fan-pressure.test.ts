import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule as fanAirflowFigure } from '../../../../src/topics/duct/figures/fan-airflow';
import { rule } from '../../../../src/topics/duct/figures/fan-pressure';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { lossBy, runPlan } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const plan = runPlan([[0, 0, 10_000]]);
const airflow = readFigure(fanAirflowFigure, deriveScene(plan))[0]?.value ?? Number.NaN;

describeFigure(rule, [
  {
    name: 'is the loss of the run at the airflow of the fan',
    plan,
    expect: [{ subjects, value: lossBy({ airflow, diameter: 0.1778, length: 10, coefficients: 1.82 }), within: 0.3 }],
  },
  {
    name: 'cap not known',
    plan: runPlan([[0, 0, 10_000]], { cap: null }),
    expect: [{ subjects, value: null, asks: 'runs.0.duct.cap' }],
  },
  { name: 'a machine under a hood', plan: linePlan(), expect: [] },
]);
