import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/racks-waiting-by-chance';
import { describeFigure } from '../../../support/figureCases';
import { rushPlan } from '../../../support/rushPlans';

const meals = (peakMeals: number) => rushPlan(({ demand }) => void (demand.peakMeals = peakMeals));
const waits = (value: number) => [{ subjects: [], value, notes: 'also machines that keep up' }];

/** M/D/1: ρ² / 2(1 − ρ) (Saylor course text, §4.5, read). */
describeFigure(rule, [
  { name: 'load 0.8', plan: meals(160), expect: waits(1.6) },
  { name: 'load 0.9', plan: meals(180), expect: waits(4.05) },
  { name: 'load 0.5', plan: meals(100), expect: waits(0.25) },
  { name: 'more than the machine does', plan: meals(300), expect: [{ subjects: [], value: null, refuses: 'the load is below 1' }] },
  {
    name: 'the meals are not known',
    plan: rushPlan(({ demand }) => void (demand.peakMeals = null)),
    expect: [{ subjects: [], value: null, asks: 'demand.peakMeals' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
