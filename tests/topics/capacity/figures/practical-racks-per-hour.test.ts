import { rule } from '../../../../src/topics/capacity/figures/practical-racks-per-hour';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];

/** 0.70 of the rated rate, from memory. */
describeFigure(rule, [
  {
    name: '0.70 of 55.3846',
    plan: sheetPlan({ cycle: cycleOf(60, 5) }),
    expect: [{ subjects, value: 38.769, within: 1e-3, notes: 'from memory' }],
  },
  { name: 'no rated rate', plan: sheetPlan({ cycle: NO_CYCLE }), expect: [{ subjects, value: null, refuses: '10 s' }] },
]);
