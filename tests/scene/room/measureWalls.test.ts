import { describe, expect, test } from 'vitest';
import { SIDES, type Side } from '../../../src/catalog';
import { type Plan, transformPlan, UNKNOWN_HOOK_UP } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { first, near, roomPlan } from '../plans';

interface Row {
  name: string;
  /** Centre of a machine 737 × 711 in a room of 8 × 6 m. */
  at: [x: number, y: number];
  rotationDeg?: number;
  outline?: [x: number, y: number][];
  /** Sides against a wall. */
  closed: Side[];
  distance: Partial<Record<Side, number | null>>;
}

const W = 737 / 2;
const D = 711 / 2;

const ROWS: Row[] = [
  { name: 'in the open', at: [4000, 3000], closed: [], distance: { left: 4000 - W, right: 4000 - W, front: 3000 - D, back: 3000 - D } },
  { name: 'its back 100 from the wall', at: [4000, D + 100], closed: ['back'], distance: { back: 100 } },
  { name: 'its back exactly 6 in from the wall', at: [4000, D + 152.4], closed: ['back'], distance: { back: 152.4 } },
  { name: 'its back a millimetre farther', at: [4000, D + 153.4], closed: [], distance: { back: 153.4 } },
  { name: 'in a corner', at: [W + 50, D + 20], closed: ['left', 'back'], distance: { left: 50, back: 20 } },
  {
    name: 'turned by a quarter in the same corner: other sides',
    at: [D + 50, W + 20],
    rotationDeg: 90,
    closed: ['front', 'left'],
    distance: { front: 50, left: 20 },
  },
  // The ends of the back lie 41 and 169 from the wall: 100 + 355.5 − (355.5·cos 10° ± 368.5·sin 10°); measured along the side's normal, over cos 10°.
  {
    name: 'turned by 10° before a wall: one end is too far, and the distance is that of the near end',
    at: [4000, D + 100],
    rotationDeg: 10,
    closed: [],
    distance: { back: (D + 100 - D * Math.cos(Math.PI / 18) - W * Math.sin(Math.PI / 18)) / Math.cos(Math.PI / 18) },
  },
  {
    name: 'a wall in two straight pieces is one wall',
    at: [4000, D + 100],
    outline: [
      [0, 0],
      [4100, 0],
      [8000, 0],
      [8000, 6000],
      [0, 6000],
    ],
    closed: ['back'],
    distance: { back: 100 },
  },
  {
    name: 'a nib covers half of the back',
    at: [4000, D + 100],
    outline: [
      [0, 0],
      [4000, 0],
      [4000, -500],
      [8000, -500],
      [8000, 6000],
      [0, 6000],
    ],
    closed: [],
    distance: { back: 100 },
  },
  {
    name: 'two steps, both near enough',
    at: [4000, D + 100],
    outline: [
      [0, 0],
      [4000, 0],
      [4000, -50],
      [8000, -50],
      [8000, 6000],
      [0, 6000],
    ],
    closed: ['back'],
    distance: { back: 100 },
  },
  { name: 'the wall cuts 30 into the back', at: [4000, D - 30], closed: ['back'], distance: { back: -30 } },
  {
    name: 'more than 10 m away',
    at: [2000, 3000],
    outline: [
      [0, 0],
      [16_000, 0],
      [16_000, 6000],
      [0, 6000],
    ],
    closed: [],
    distance: { right: null },
  },
];

describe.each(ROWS)('$name', (row) => {
  const plan = planOf(row);
  const cases: [string, Plan][] = [
    ['as drawn', plan],
    ['walked the other way', { ...plan, room: { ...plan.room, outline: plan.room.outline.toReversed() } }],
    ['turned by 90°', transformPlan(plan, { rotateDeg: 90 })],
    ['turned by 23° and moved', transformPlan(plan, { rotateDeg: 23, move: { x: 3e4, y: -5e4 } })],
  ];
  test.each(cases)('%s', (_name, turned) => {
    const { sides } = first(deriveScene(turned).machines);
    expect(SIDES.filter((side) => sides[side].isAgainstWall).sort()).toEqual(row.closed.toSorted());
    for (const [side, expected] of Object.entries(row.distance)) {
      expect(sides[side as Side].wallDistance).toEqual(near(expected));
    }
  });
});

function planOf({ at: [x, y], rotationDeg = 0, outline }: Row): Plan {
  return roomPlan((draft) => {
    draft.machines = [
      {
        id: 'machine',
        sheet: 'recirculating-hot-water',
        x,
        y,
        rotationDeg,
        controls: 'front-left',
        electrical: null,
        hookUp: UNKNOWN_HOOK_UP,
      },
    ];
    if (outline !== undefined) draft.room.outline = outline.map(([a, b], i) => ({ id: `corner-${i}`, x: a, y: b }));
  });
}
