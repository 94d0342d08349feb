import { rule } from '../../../../src/topics/duct/figures/duct-dew-point';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { runPlan } from '../../../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 3000]] as const;
const air = (exhaustC: number, exhaustHumidity: number | null) => runPlan(UP, { exhaustC, exhaustHumidity });

describeFigure(rule, [
  // PsychroLib, its documentation (read): 25 °C and 80 % have their dew point at 21.3094 °C.
  { name: '25 °C and 80 %', plan: air(25, 0.8), expect: [{ subjects, value: 21.3094, within: 1e-3 }] },
  // Computed with PsychroLib: 110 °F and 80 %, 102.40 °F.
  { name: '110 °F and 80 %', plan: air(toSI(110, 'F'), 0.8), expect: [{ subjects, value: toSI(102.4, 'F'), within: 0.01 }] },
  { name: 'saturated', plan: air(40, 1), expect: [{ subjects, value: 40, within: 1e-6 }] },
  { name: 'dry air has none', plan: air(40, 0), expect: [{ subjects, value: null, refuses: 'vapourPa is 0' }] },
  { name: 'not known', plan: air(40, null), expect: [{ subjects, value: null, asks: 'runs.0.duct.exhaustHumidity' }] },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
