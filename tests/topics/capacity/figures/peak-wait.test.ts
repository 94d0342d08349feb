import { createPlan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/capacity/figures/peak-wait';
import { describeFigure } from '../../../support/figureCases';
import { rushPlan } from '../../../support/rushPlans';

const longest = (value: number) => ({ part: 'longest', subjects: [], value });

describeFigure(rule, [
  {
    // 90 racks an hour for an hour, then 20, washed 60 an hour: cleared in 0.75 h, the longest wait is 30 min.
    name: '90 racks an hour, then 20',
    plan: rushPlan(),
    expect: [longest(1800), { part: 'cleared', subjects: [], value: 2700, notes: 'other hours' }],
  },
  {
    name: 'as many after the peak as are washed',
    plan: rushPlan(({ demand }) => void (demand.mealsPerDay = 900)),
    expect: [longest(1800), { part: 'cleared', subjects: [], value: null, refuses: 'the pile never goes' }],
  },
  {
    name: 'the machine is on no longer than the peak',
    plan: rushPlan(({ demand }) => void (demand.hoursPerDay = 1)),
    expect: [longest(1800), { part: 'cleared', subjects: [], value: null, refuses: 'no longer than the peak' }],
  },
  {
    name: 'nobody knows how long the machine is on',
    plan: rushPlan(({ demand }) => void (demand.hoursPerDay = null)),
    expect: [longest(1800), { part: 'cleared', subjects: [], value: null, asks: 'demand.hoursPerDay' }],
  },
  {
    name: 'a machine that keeps up, whatever comes after',
    plan: rushPlan(({ demand }) => void Object.assign(demand, { peakMeals: 200, hoursPerDay: null })),
    expect: [longest(0), { part: 'cleared', subjects: [], value: 0, notes: 'nothing waits' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
