import { rule } from '../../../../src/topics/water/figures/water-speed';
import { MM_PER_INCH, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';
import { flowOf } from '../../../support/waterPlans';

const subjects = ['machine'];
const speedPlan = (gpm: number, inches: number) => sheetPlan(flowOf(gpm), ({ pipes }) => void (pipes.bore = inches * MM_PER_INCH));
const is = (feetPerS: number) => [{ subjects, value: toSI(feetPerS, 'ft/s'), within: toSI(0.005, 'ft/s') }];

/** v = 0.4085 q / d², gpm and in (secondary); the printed examples are worked out with it. */
describeFigure(rule, [
  { name: '1 gpm in 1 in', plan: speedPlan(1, 1), expect: is(0.4085) },
  { name: '5 gpm in 0.545 in', plan: speedPlan(5, 0.545), expect: is(6.88) },
  { name: '10 gpm in 1.025 in', plan: speedPlan(10, 1.025), expect: is(3.89) },
  { name: '200 gpm in 3.048 in', plan: speedPlan(200, 3.048), expect: is(8.79) },
  {
    name: 'the bore is not known',
    plan: linePlan({}, ({ pipes }) => void (pipes.bore = null)),
    expect: [{ subjects, value: null, asks: 'pipes.bore' }],
  },
  { name: 'no time for the rinse', plan: sheetPlan({ cycle: cycleOf(55, 5) }), expect: [{ subjects, value: null, refuses: 'rinseS' }] },
]);
