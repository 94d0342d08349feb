import { rule } from '../../../../src/topics/duct/figures/run-friction';
import { describeFigure } from '../../../support/figureCases';
import { lossBy, runPlan } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;
/** Of one metre; the viscosity of the oracle differs by a part in 2000. */
const metre = (airflow: number, roughnessFt: number) =>
  lossBy({ airflow, diameter: 0.1778, length: 1, coefficients: 0, roughness: roughnessFt * 0.3048 });

describeFigure(rule, [
  {
    name: 'aluminum, 0.2 m³/s',
    plan: runPlan(UP),
    expect: [
      {
        subjects,
        value: metre(0.2, 0.0002),
        within: 0.002,
        notes: /Colebrook 0\.0202, which is taken; by Haaland 0\.0199, .*Churchill .*at most 0\.15 in\. wg/,
      },
    ],
  },
  {
    name: 'flexible duct is far rougher',
    plan: runPlan(UP, { material: 'flexible' }),
    expect: [{ subjects, value: metre(0.2, 0.003), within: 0.003 }],
  },
  { name: 'more air', plan: runPlan(UP, { airflow: 0.24 }), expect: [{ subjects, value: metre(0.24, 0.0002), within: 0.003 }] },
  { name: 'material not known', plan: runPlan(UP, { material: null }), expect: [{ subjects, value: null, asks: 'runs.0.duct.material' }] },
  { name: 'air in it not known', plan: runPlan(UP, { exhaustC: null }), expect: [{ subjects, value: null, asks: 'runs.0.duct.exhaustC' }] },
  {
    name: 'its humidity not known',
    plan: runPlan(UP, { exhaustHumidity: null }),
    expect: [{ subjects, value: null, asks: 'runs.0.duct.exhaustHumidity' }],
  },
  {
    name: 'height above the sea not known',
    plan: runPlan(UP, {}, ({ air }) => void (air.elevation = null)),
    expect: [{ subjects, value: null, asks: 'air.elevation' }],
  },
  {
    name: 'faster than the formulas hold for',
    plan: runPlan(UP, { airflow: 2 }),
    expect: [{ subjects, value: null, refuses: 'the velocity is at most 60 m/s' }],
  },
]);
