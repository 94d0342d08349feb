import { rule } from '../../../../src/topics/water/figures/rinse-water-per-hour';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];
const rinseWaterL = fromSI(toSI(0.75, 'gal'), 'L');

/** NSF/ANSI 3 listings, preface: gallons an hour are gallons a cycle times racks an hour. */
describeFigure(rule, [
  {
    name: '0.75 gal at 55.3846 racks/h: 41.538 gal',
    plan: sheetPlan({ rinseWaterL, cycle: cycleOf(60, 5) }),
    expect: [{ subjects, value: toSI(41.538, 'gal'), within: toSI(0.001, 'gal'), notes: 'Rinse water alone' }],
  },
  { name: 'no rated rate', plan: sheetPlan({ rinseWaterL, cycle: NO_CYCLE }), expect: [{ subjects, value: null, refuses: '10 s' }] },
]);
