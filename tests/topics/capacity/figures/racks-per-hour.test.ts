import { rule } from '../../../../src/topics/capacity/figures/racks-per-hour';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];

/** NSF/ANSI 3 listings, preface, 8 March 2025: RPH = 3600 / TC, TC with 5 s of load time. */
describeFigure(rule, [
  { name: '55 s and 5 s', plan: sheetPlan({ cycle: cycleOf(55, 5) }), expect: [{ subjects, value: 60, notes: null }] },
  { name: '60 s and 5 s', plan: sheetPlan({ cycle: cycleOf(60, 5) }), expect: [{ subjects, value: 55.3846, within: 1e-4 }] },
  {
    name: 'wash, rinse, dwell and load all count: 40 + 10 + 10 + 5 s',
    plan: sheetPlan({ cycle: { washS: 40, rinseS: 10, dwellS: 10, loadS: 5 } }),
    expect: [{ subjects, value: 55.3846, within: 1e-4 }],
  },
  // Trade magazine: a 2-minute cycle and 30 s of load make 24 racks an hour, not 30 (secondary).
  { name: '120 s and 30 s', plan: sheetPlan({ cycle: cycleOf(120, 30) }), expect: [{ subjects, value: 24 }] },
  { name: 'a corner says what it takes', plan: linePlan(), expect: [{ subjects, value: 3600 / 62, notes: /at a corner; 5 s/ }] },
  { name: 'no machine does it in 5 s', plan: sheetPlan({ cycle: NO_CYCLE }), expect: [{ subjects, value: null, refuses: '10 s' }] },
]);
