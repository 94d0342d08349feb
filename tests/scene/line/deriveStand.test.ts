import { describe, expect, test } from 'vitest';
import { dot, sub } from '../../../src/geometry';
import { type Plan, type Thing, transformPlan } from '../../../src/plan';
import { deriveScene, floorObstacles, type Line } from '../../../src/scene';
import { first, type LineWords, linePlan, near } from '../plans';

const cart = (x: number, y: number, width: number, depth: number): Thing => ({
  id: 'cart',
  kind: 'cart',
  name: '',
  x,
  y,
  rotationDeg: 0,
  width,
  depth,
  height: 900,
  ware: 'none',
  clearBelow: null,
  sealed: null,
  basins: null,
});

interface Row {
  name: string;
  words: LineWords;
  change?: (draft: Plan) => unknown;
  /** Centre of the operator from the back left corner of the machine, and how far it is to the controls; null for nowhere. */
  stand: { x: number; y: number; reach: number } | null;
}

/**
 * A machine 737 × 711; controls at 47.5 from the front's left end. Rack lines: sides 355.5 from the
 * back, front 368.5 from the left. Operator's edges lie 273 from them: the left table's at y = 628.5,
 * the front table's at x = 95.5. A person takes a circle of 711.2.
 */
const R = 711.2 / 2;
const FAMILY = 'recirculating-hot-water';
const BESIDE = -100 - Math.sqrt(R ** 2 - (1111 - 628.5 - R) ** 2);

const ROWS: Row[] = [
  {
    name: 'corner: between the two tables',
    words: { family: FAMILY },
    stand: { x: 95.5 - R, y: 628.5 + R, reach: Math.hypot(95.5 - R - 47.5, 628.5 + R - 711) },
  },
  {
    name: 'straight: right before the controls',
    words: { family: FAMILY, configuration: 'straight' },
    stand: { x: 47.5, y: 711 + R, reach: R },
  },
  {
    name: 'straight, with a cart before the front: beside it, touching its corner and the left table',
    words: { family: FAMILY, configuration: 'straight' },
    change: (draft) => {
      const { x, y } = first(draft.machines);
      // From 100 left of the machine to its right end, 400 before its front.
      draft.things = [cart(x - 50, y + 355.5 + 400 + 300, 837, 600)];
    },
    // The circle touches the left table's edge (y = 628.5) and the cart's corner (−100, 1111).
    stand: { x: BESIDE, y: 628.5 + R, reach: Math.hypot(47.5 - BESIDE, 628.5 + R - 711) },
  },
  {
    name: 'corner, the inside filled up',
    words: { family: FAMILY },
    change: (draft) => {
      const { x, y } = first(draft.machines);
      draft.things = [cart(x - 1800, y + 2000, 3000, 3000)];
    },
    stand: null,
  },
  {
    name: 'controls at the outside: the place is farther than an arm',
    words: { family: FAMILY },
    change: (draft) => (first(draft.machines).controls = 'front-right'),
    stand: { x: 95.5 - R, y: 628.5 + R, reach: Math.hypot(95.5 - R - 689.5, 628.5 + R - 711) },
  },
  {
    name: 'controls at no position of the data sheet: near the corner of the turn',
    words: { family: FAMILY },
    change: (draft) => (first(draft.machines).controls = 'elsewhere'),
    stand: { x: 95.5 - R, y: 628.5 + R, reach: Math.hypot(95.5 - R, 628.5 + R - 711) },
  },
];

describe.each(ROWS)('$name', ({ words, change, stand }) => {
  const plan = linePlan(words, change);
  test.each([0, 90, 180, 270, 45, 201])('turned by %d°', (rotateDeg) => {
    const line = lineOf(transformPlan(plan, { rotateDeg, move: { x: 900, y: -4000 } }));
    expect(inMachineFrame(line)).toEqual(stand === null ? null : { x: near(stand.x, 4), y: near(stand.y, 4), reach: near(stand.reach, 4) });
  });
});

/** The place to stand, from the machine's back left corner: the right end of its back, as seen from behind. */
function inMachineFrame({ machine: { sides }, stand }: Line): Row['stand'] {
  if (stand === null) return null;
  const from = sub(stand.centre, sides.back.edge.b);
  return { x: dot(from, sides.right.normal), y: dot(from, sides.front.normal), reach: stand.reach };
}

const lineOf = (plan: Plan): Line => first(deriveScene(plan).lines);

test('what blocks the floor: bodies below head height, but no hood and no open doors', () => {
  const plan = linePlan({ family: FAMILY }, (draft) => {
    draft.things = [cart(500, 2500, 400, 400)];
    Object.assign(first(draft.hoods), { lipHeight: 1950 });
  });
  const scene = deriveScene(plan);
  const owners = floorObstacles(scene).map(({ owner }) => owner);
  expect([...new Set(owners)].sort()).toEqual(['cart', 'clean-table', 'machine', 'soiled-table']);
  expect(floorObstacles(scene)).toBe(floorObstacles(scene));
});
