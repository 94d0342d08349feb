import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/door-approach';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThingBetween, clearAway } from '../../../support/roomPlan';

/** The door lies in the lower wall, at 4049.5, from 250 to 1164; its latch is at 1164. */
const door = (change: Partial<Plan['room']['openings'][number]>, more: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    clearAway(plan);
    for (const opening of plan.room.openings) Object.assign(opening, change);
    more(plan);
  });
const of = (part: 'depth' | 'latch', verdict: ExpectedFinding['verdict'], measured: number, limit: number): ExpectedFinding => ({
  part,
  verdict,
  subjects: ['door'],
  measured,
  limit,
});
const [pushDepth, pushLatch] = [of('depth', 'clear', 1219.2, 1219.2), of('latch', 'clear', 304.8, 304.8)];
const [pullDepth, pullLatch] = [of('depth', 'clear', 1524, 1524), of('latch', 'clear', 457.2, 457.2)];

/** Pull 60 and 18 in: ADA Standards 404.2.4.1 (secondary); push 48 and 12 in (memory: never more than a watch). */
describeCheck(check, [
  {
    name: 'the line’s door, pushed open from within',
    plan: linePlan(),
    expect: [
      { ...pushDepth, says: 'Before the door 4′ 0″ of floor is free, where it is pushed open.' },
      { ...pushLatch, says: 'Beside the latch of the door 1′ 0″ of floor is free, where it is pushed open.' },
    ],
  },
  { name: 'pulled open from within', plan: door({ swing: 'in' }), expect: [pullDepth, pullLatch] },
  {
    name: 'pushed, the latch 250 from the corner',
    plan: door({ hinge: 'start' }),
    expect: [
      {
        ...of('latch', 'watch', 250, 304.8),
        says: 'Beside the latch of the door only 9 ¹³⁄₁₆″ of floor is free; where the room must be accessible 1′ 0″ is asked on the side that pushes if it has a closer and a latch. Clear the floor there, or hang the door on its other jamb.',
      },
      pushDepth,
    ],
  },
  {
    name: 'pulled, a bench 59 in before it',
    plan: door({ swing: 'in' }, (plan) => addThingBetween(plan, 'bench', [300, 2000], [1100, 4049.5 - 1498.6], { kind: 'work-table' })),
    expect: [
      {
        ...of('depth', 'watch', 1498.6, 1524),
        says: 'Before the door only 4′ 11″ of floor is free; where the room must be accessible 5′ 0″ is asked on the side that pulls. Clear the floor before it.',
      },
      pullLatch,
    ],
  },
  {
    name: 'pulled, a bench 60 in before it',
    plan: door({ swing: 'in' }, (plan) => addThingBetween(plan, 'bench', [300, 2000], [1100, 4049.5 - 1524], { kind: 'work-table' })),
    expect: [pullDepth, pullLatch],
  },
  {
    name: 'a cart before the door is rolled aside',
    plan: door({ swing: 'in' }, (plan) => addThingBetween(plan, 'cart', [300, 2600], [1100, 3400])),
    expect: [pullDepth, pullLatch],
  },
  {
    name: 'pulled, a bin 17 in beside the latch',
    plan: door({ swing: 'in' }, (plan) => addThingBetween(plan, 'bin', [1164 + 431.8, 3449.5], [1900, 3949.5], { kind: 'bin' })),
    expect: [of('latch', 'watch', 431.8, 457.2), pullDepth],
  },
  {
    name: 'two leaves have their latch in the middle',
    plan: door({ kind: 'double-door' }),
    expect: [pushDepth],
  },
  {
    name: 'one door that complies is enough',
    plan: door({ hinge: 'start' }, ({ room }) => {
      const [first] = room.openings;
      if (first !== undefined) room.openings.push({ ...first, id: 'side-door', from: 2500 });
    }),
    expect: [
      { ...pushDepth, subjects: ['side-door'] },
      { ...pushLatch, subjects: ['side-door'] },
    ],
  },
  { name: 'a cased opening has no door', plan: door({ kind: 'cased-opening', swing: 'none' }), expect: [] },
  { name: 'no door', plan: linePlan({}, ({ room }) => void (room.openings = [])), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
