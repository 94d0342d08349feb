import { rule } from '../../src/figures/rules/turning-space';
import { createPlan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { describeFigure } from '../support/figureCases';
import { linePlan } from '../support/linePlan';
import { addThing } from '../support/roomPlan';

const stand = deriveScene(linePlan()).lines[0]?.stand?.centre ?? { x: Number.NaN, y: Number.NaN };
/** The circle of 60 in touches the soiled table, whose edge is at 767, and the clean table, whose edge is at 4045.5. */
const CORNER = { x: 4045.5 - 762, y: 767 + 762 };

/** 60 in: ADA Standards 304.3.1 (L-A11, read). */
describeFigure(rule, [
  {
    name: 'in the corner of the turn',
    plan: linePlan(),
    expect: [
      { subjects: ['machine'], value: Math.hypot(CORNER.x - stand.x, CORNER.y - stand.y) / 1000, within: 1e-4, notes: /in a work room/ },
    ],
  },
  {
    name: 'a cart on the floor behind the operator',
    plan: linePlan({}, (plan) => addThing(plan, 'cart', 3000, 2200, 1200, 1200)),
    expect: [{ subjects: ['machine'], value: null, refuses: 'no circle of 60 in is free' }],
  },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
