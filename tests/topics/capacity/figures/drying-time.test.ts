import { rule } from '../../../../src/topics/capacity/figures/drying-time';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { tableOf } from '../../../support/linePlan';

const subjects = ['clean-table'];

/** Little's law turned round. */
describeFigure(rule, [
  { name: 'three places at 55.3846 an hour', plan: sheetPlan({ cycle: cycleOf(60, 5) }), expect: [{ subjects, value: 195 }] },
  {
    name: 'two places',
    plan: sheetPlan({ cycle: cycleOf(60, 5) }, ({ settings }) => void (settings.rackPitch = 520.7)),
    expect: [{ subjects, value: 130 }],
  },
  { name: 'no rated rate', plan: sheetPlan({ cycle: NO_CYCLE }), expect: [{ subjects, value: null, refuses: '10 s' }] },
  { name: 'no clean table', plan: sheetPlan({}, (plan) => void (plan.tables = [tableOf(plan, 'soiled')])), expect: [] },
]);
