import type { Fitting } from '../../src/plan';
import { createPlan } from '../../src/plan';
import { check } from '../../src/services/rules/pre-rinse-size';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { linePlan, tableOf } from '../support/linePlan';

const fitting = (id: string, change: Partial<Fitting>) =>
  linePlan({}, (plan) => {
    for (const item of tableOf(plan, 'soiled').fittings) if (item.id === id) Object.assign(item, change);
  });
const of = (part: string, subject: string, verdict: ExpectedFinding['verdict'], measured: number, limit: number): ExpectedFinding => ({
  part,
  verdict,
  subjects: [subject, 'soiled-table'],
  measured,
  limit,
});
const size = of('size', 'pre-rinse', 'clear', 510, 457.2);
const depth = of('depth', 'pre-rinse', 'clear', 200, 188);
const scrap = of('scrap', 'scrap', 'clear', 200, 200);

/** 18 × 18 in, 188 mm, 8 in (200 mm): UFGS 11400A §2.4.2.6 (L-09, L-10; read). */
describeCheck(check, [
  { name: 'a whole line', plan: linePlan(), expect: [size, depth, scrap] },
  {
    name: 'a bowl of 17 in across',
    plan: fitting('pre-rinse', { width: 431.8 }),
    expect: [
      {
        ...of('size', 'pre-rinse', 'watch', 431.8, 457.2),
        says: 'The pre-rinse is 1′ 5″ on its shorter side, 1″ less than is wanted. Take a larger one.',
      },
      depth,
      scrap,
    ],
  },
  {
    name: 'a bowl 150 deep',
    plan: fitting('pre-rinse', { bowlDepth: 150 }),
    expect: [of('depth', 'pre-rinse', 'watch', 150, 188), size, scrap],
  },
  { name: 'a trough 190 wide', plan: fitting('scrap', { length: 190 }), expect: [of('scrap', 'scrap', 'watch', 190, 200), size, depth] },
  { name: 'a sink without a spray is no pre-rinse', plan: fitting('pre-rinse', { spray: false, width: 300 }), expect: [scrap] },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
