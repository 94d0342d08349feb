import { createPlan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { rule } from '../../../../src/topics/people/figures/turning-space';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThing, addThingBetween } from '../../../support/roomPlan';

const stand = deriveScene(linePlan()).lines[0]?.stand?.centre ?? { x: Number.NaN, y: Number.NaN };
/** The circle of 60 in touches the soiled table, whose edge is at 767, and the clean table, whose edge is at 4045.5. */
const CORNER = { x: 4045.5 - 762, y: 767 + 762 };

/** Middle of the square of a T whose arm lies along the soiled table and whose base goes down between two carts. */
const T_AWAY = Math.hypot(2300 + 457.2 - stand.x, 767 + 762 - stand.y);

/** 60 in: ADA Standards 304.3.1 (read). The T: 304.3.2 (read). */
describeFigure(rule, [
  {
    name: 'in the corner of the turn',
    plan: linePlan(),
    expect: [
      {
        part: 'circle',
        subjects: ['machine'],
        value: Math.hypot(CORNER.x - stand.x, CORNER.y - stand.y) / 1000,
        within: 1e-4,
        notes: /in a work room/,
      },
    ],
  },
  {
    name: 'a cart on the floor behind the operator',
    plan: linePlan({}, (plan) => addThing(plan, 'cart', 3000, 2200, 1200, 1200)),
    expect: [{ subjects: ['machine'], value: null, refuses: 'neither a circle of 60 in nor a T' }],
  },
  {
    // A way of just 36 in along the soiled table, whose edge is at 767, and one of 36 in between the carts.
    name: 'a T between two carts, no circle',
    plan: linePlan({}, (plan) => {
      addThingBetween(plan, 'cart', [700, 767 + 914.4], [2300, 2600]);
      addThingBetween(plan, 'other-cart', [2300 + 914.4, 767 + 914.4], [4045.5, 2600]);
    }),
    expect: [{ part: 't-shape', subjects: ['machine'], value: T_AWAY / 1000, within: 1e-4, notes: /not slanted/ }],
  },
  {
    name: 'the same a hair narrower: neither',
    plan: linePlan({}, (plan) => {
      addThingBetween(plan, 'cart', [700, 767 + 914.4], [2300, 2600]);
      addThingBetween(plan, 'other-cart', [2300 + 914.3, 767 + 914.4], [4045.5, 2600]);
    }),
    expect: [{ subjects: ['machine'], value: null, refuses: 'nor a T' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
