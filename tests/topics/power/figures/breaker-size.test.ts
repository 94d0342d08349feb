import { rule } from '../../../../src/topics/power/figures/breaker-size';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan, versionOf } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const notes = /125 % .* 3 h .* stricter\. Preliminary: .* licensed electrician decides/;

/** NEC 210.20(A), 240.6(A), secondary; sizes worked out. */
describeFigure(rule, [
  {
    name: '14.5 kW, 208 V, three phases: 50.31 A',
    plan: sheetPlan({ electrical: versionOf(14.5, 208, 3, 40.2) }),
    expect: [{ subjects, value: 60, notes }],
  },
  {
    name: '12 kW, 208 V, three phases: 41.64 A',
    plan: sheetPlan({ electrical: versionOf(12, 208, 3, 33.3) }),
    expect: [{ subjects, value: 45 }],
  },
  {
    name: '12 kW, 240 V, single phase: 62.5 A',
    plan: sheetPlan({ electrical: versionOf(12, 240, 1, 50) }),
    expect: [{ subjects, value: 70 }],
  },
  {
    name: '24 kW, 208 V, three phases: 83.27 A',
    plan: sheetPlan({ electrical: versionOf(24, 208, 3, 66.6) }),
    expect: [{ subjects, value: 90 }],
  },
  {
    name: '24 kW, 480 V, three phases: 36.08 A',
    plan: sheetPlan({ electrical: versionOf(24, 480, 3, 28.9) }),
    expect: [{ subjects, value: 40 }],
  },
  {
    name: 'the data sheet states more than its power makes: 65 A',
    plan: sheetPlan({ electrical: versionOf(14.5, 208, 3, 52) }),
    expect: [{ subjects, value: 70 }],
  },
  {
    // 40.25 A, and no 125 %: the next standard size above is 45 A.
    name: '14.5 kW that does not last, by the plan',
    plan: sheetPlan({ electrical: versionOf(14.5, 208, 3, 40.2) }, ({ codes }) => void (codes.load = 'not-continuous')),
    expect: [{ subjects, value: 45, notes: 'For the current itself' }],
  },
  {
    name: '14.5 kW that lasts, by the plan',
    plan: sheetPlan({ electrical: versionOf(14.5, 208, 3, 40.2) }, ({ codes }) => void (codes.load = 'continuous')),
    expect: [{ subjects, value: 60, notes: 'the plan counts the machine as a load that lasts' }],
  },
  {
    name: 'no version is chosen',
    plan: linePlan({}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.electrical = null;
    }),
    expect: [{ subjects, value: null, asks: 'machines.0.electrical' }],
  },
  {
    name: 'above what is held',
    plan: sheetPlan({ electrical: versionOf(33, 208, 3, 91.6) }),
    expect: [{ subjects, value: null, refuses: 'up to 100 A are held' }],
  },
  {
    name: 'a voltage below what is held',
    plan: sheetPlan({ electrical: versionOf(1, 60, 1, 16.7) }),
    expect: [{ subjects, value: null, refuses: 'voltageV is 60' }],
  },
]);
