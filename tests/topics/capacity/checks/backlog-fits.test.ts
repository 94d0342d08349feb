import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import { runChecks } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/capacity/checks/backlog-fits';
import { check as peakKept } from '../../../../src/topics/capacity/checks/peak-kept';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addCart } from '../../../support/rushPlans';

/** 3600 / 62 racks an hour; three racks stand before the machine and one at the drop-off. */
const RATE = 3600 / 62;
const PLACES = 4;
const found = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  subjects: ['machine'],
  measured,
  limit: PLACES,
});
const peak = (meals: number | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    Object.assign(plan.demand, { peakMeals: meals, peakMinutes: 60, piecesPerMeal: 6, piecesPerRack: 20 });
    change(plan);
  });
const withCart = (meals: number, width: number) => peak(meals, (plan) => addCart(plan, { width, depth: 510 }));

/** Food Code 4-301.13: room for all soiled ware that gathers. The pile is arithmetic. Slower machines are stopped at by the peak. */
describeCheck(check, [
  {
    name: '90 meals in an hour',
    plan: peak(90),
    expect: [{ ...found('clear', 0), says: 'No rack waits at the end of the peak.' }],
  },
  {
    name: '150 meals: 45 racks, of the 40.6 that practice keeps',
    plan: peak(150),
    expect: [
      {
        ...found('watch', 45 - 0.7 * RATE),
        says: 'At the end of the peak 4.4 racks wait, when the machine does 0.70 of its rate, and there is room for 4 before the machine: lengthen the soiled landing, add a cart, or take a faster machine.',
      },
    ],
  },
  { name: '140 meals: 1.4 racks wait in practice', plan: peak(140), expect: [{ ...found('clear', 0) }] },
  {
    name: '220 meals: 66 racks',
    plan: peak(220),
    expect: [
      {
        ...found('watch', 66 - RATE),
        says: 'At the end of the peak 7.9 racks wait, for they come back faster than the machine washes, and there is room for 4 before it: with a faster machine none would wait; a longer soiled landing or a cart would hold them until they are washed.',
      },
    ],
  },
  { name: 'and a cart that takes two', plan: withCart(220, 1100), expect: [{ ...found('watch', 66 - RATE), limit: 6 }] },
  { name: 'and a cart that takes four', plan: withCart(220, 2040), expect: [{ ...found('watch', 66 - 0.7 * RATE), limit: 8 }] },
  {
    name: 'the meals are not known',
    plan: peak(null),
    expect: [
      {
        verdict: 'ask',
        subjects: ['machine'],
        measured: null,
        asks: 'demand.peakMeals',
        says: 'To know how many racks wait at the end of the peak, say the meals in the peak.',
      },
    ],
  },
]);

describe('machines slower than the peak, and too little room', () => {
  const findings = runChecks(deriveScene(peak(220)), [peakKept, check]);
  it('is one stop, at the peak, and a watch', () => {
    expect(findings.map(({ verdict, check: id }) => `${verdict} ${id}`)).toEqual(['stop peak-kept', 'watch backlog-fits']);
  });
});
