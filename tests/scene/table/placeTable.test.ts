import { describe, expect, test } from 'vitest';
import { area, pointAt } from '../../../src/geometry';
import { type Fitting, type Plan, type Table, transformPlan, UNKNOWN_TROUGH } from '../../../src/plan';
import { deriveScene, type PlacedTable } from '../../../src/scene';
import { first, near, roomPlan, table } from '../plans';

const placed = (changes: Partial<Table>, move: (plan: Plan) => Plan = (plan) => plan): PlacedTable =>
  first(deriveScene(move(roomPlan((draft) => void (draft.tables = [table(changes)])))).tables);

describe('a straight table, heading right, people on its right (down the paper)', () => {
  const straight = placed({});
  test('its rack line, edges and deck', () => {
    expect(straight.path).toEqual([
      { x: 2000, y: 3000 },
      { x: 4000, y: 3000 },
    ]);
    expect(straight.heading).toEqual({ x: 1, y: 0 });
    expect(straight.operatorEdge).toEqual([
      { x: 2000, y: 3273 },
      { x: 4000, y: 3273 },
    ]);
    expect(straight.backEdge).toEqual([
      { x: 2000, y: 2511 },
      { x: 4000, y: 2511 },
    ]);
    expect(area(straight.outline)).toBeCloseTo(2000 * 762, 6);
    expect(straight.machine).toBeNull();
  });
  test('the other operator side changes the edges', () => {
    const other = placed({ operatorSide: 'left' });
    expect(other.operatorEdge[0]).toEqual({ x: 2000, y: 2727 });
    expect(other.backEdge[0]).toEqual({ x: 2000, y: 3489 });
  });
});

describe('a table with a turn to the right, away from the wall behind it', () => {
  // People stand on the right: inside the turn. Legs of 2000 and 1000 along the rack line.
  const turned = placed({
    legs: [
      { length: 2000, turnDeg: 0 },
      { length: 1000, turnDeg: 90 },
    ],
  });
  test('path and edges, with the corner mitred', () => {
    expect(turned.path).toEqual([
      { x: 2000, y: 3000 },
      { x: 4000, y: 3000 },
      { x: 4000, y: 4000 },
    ]);
    expect(turned.length).toBe(3000);
    expect(turned.operatorEdge).toEqual([
      { x: 2000, y: 3273 },
      { x: 3727, y: 3273 },
      { x: 3727, y: 4000 },
    ]);
    expect(turned.backEdge).toEqual([
      { x: 2000, y: 2511 },
      { x: 4489, y: 2511 },
      { x: 4489, y: 4000 },
    ]);
  });
  test('its pieces cover the deck once', () => {
    expect(turned.deck).toHaveLength(2);
    const whole = 2489 * 762 + 762 * (4000 - 3273);
    expect(turned.deck.reduce((sum, piece) => sum + area(piece), 0)).toBeCloseTo(whole, 6);
    expect(area(turned.outline)).toBeCloseTo(whole, 6);
  });
});

const FITTINGS: { fitting: Fitting; x: [number, number]; y: [number, number] }[] = [
  {
    fitting: { id: 'a', kind: 'sink', at: 800, length: 500, width: 400, bowlDepth: 200, spray: true, rackSlide: null, waste: null },
    x: [2550, 3050],
    y: [2800, 3200],
  },
  {
    fitting: { id: 'b', kind: 'scrap', at: 500, length: 200, width: 300, ...UNKNOWN_TROUGH },
    x: [2400, 2600],
    y: [2850, 3150],
  },
  { fitting: { id: 'c', kind: 'landing', at: 750, length: 1500 }, x: [2000, 3500], y: [2511, 3273] },
  { fitting: { id: 'd', kind: 'drop-off', at: 1800, length: 400 }, x: [3600, 4000], y: [2511, 3273] },
  { fitting: { id: 'e', kind: 'overshelf', at: 1000, length: 600, depth: 300, height: 1400 }, x: [2700, 3300], y: [2511, 2811] },
];

test.each(FITTINGS)('a $fitting.kind lies where it should', ({ fitting, x, y }) => {
  const found = first(placed({ fittings: [fitting] }).fittings);
  expect([found.from, found.to]).toEqual([x[0] - 2000, x[1] - 2000]);
  expect(found.centre).toEqual({ x: (x[0] + x[1]) / 2, y: 3000 });
  expect([Math.min, Math.max].map((of) => of(...found.polygon.map((p) => p.x)))).toEqual(x);
  expect([Math.min, Math.max].map((of) => of(...found.polygon.map((p) => p.y)))).toEqual(y);
});

test('a landing around a turn has the deck of both legs', () => {
  const legs = [
    { length: 2000, turnDeg: 0 },
    { length: 1000, turnDeg: 90 },
  ];
  const found = first(placed({ legs, fittings: [{ id: 'a', kind: 'landing', at: 2000, length: 1000 }] }).fittings);
  // 500 before and after the turn on the rack line: 500 + 489 along the back, less the inner corner counted once.
  expect(area(found.polygon)).toBeCloseTo(762 * (500 + 489) + 762 * (500 - 273), 6);
});

interface Fall {
  name: string;
  deck: Table['deck'];
  turnDeg?: number;
  z: (number | null)[];
  leastSlope: number | null;
  pools: { lowest: number; depth: number; x: number; y: number }[];
}

/** Legs of 1000 and 1000. */
const FALLS: Fall[] = [
  { name: 'falls', deck: { kind: 'fall', jointHeight: 864, fall: 0.02 }, z: [864, 884, 904], leastSlope: 0.02, pools: [] },
  {
    name: 'falls away',
    deck: { kind: 'fall', jointHeight: 864, fall: -0.01 },
    z: [864, 854, 844],
    leastSlope: -0.01,
    pools: [{ lowest: 2000, depth: 20, x: 3000, y: 4000 }],
  },
  {
    name: 'level',
    deck: { kind: 'fall', jointHeight: 864, fall: 0 },
    z: [864, 864, 864],
    leastSlope: 0,
    pools: [{ lowest: 1000, depth: 0, x: 3000, y: 3000 }],
  },
  {
    name: 'joint height not known',
    deck: { kind: 'fall', jointHeight: null, fall: 0.02 },
    z: [null, null, null],
    leastSlope: null,
    pools: [],
  },
  { name: 'fall not known', deck: { kind: 'fall', jointHeight: 864, fall: null }, z: [864, null, null], leastSlope: null, pools: [] },
  {
    name: 'low at the turn',
    deck: { kind: 'heights', heights: [864, 858, 880] },
    z: [864, 858, 880],
    leastSlope: -0.006,
    pools: [{ lowest: 1000, depth: 6, x: 3000, y: 3000 }],
  },
  { name: 'one height missing', deck: { kind: 'heights', heights: [864, null, 880] }, z: [864, null, 880], leastSlope: null, pools: [] },
  {
    name: 'a height for a turn that is not there yet',
    deck: { kind: 'heights', heights: [864, 880] },
    z: [864, 880, null],
    leastSlope: null,
    pools: [],
  },
];

test.each(FALLS)('deck: $name', ({ deck, z, leastSlope, pools }) => {
  const found = placed({
    deck,
    legs: [
      { length: 1000, turnDeg: 0 },
      { length: 1000, turnDeg: 90 },
    ],
  });
  expect(found.nodes.map(({ s }) => s)).toEqual([0, 1000, 2000]);
  expect(found.nodes.map((node) => node.z)).toEqual(z);
  expect(found.water?.leastSlope ?? null).toEqual(near(leastSlope, 9));
  expect(found.water?.pools.map(({ lowest, depth }) => ({ lowest, depth, ...pointAt(found.path, lowest).point })) ?? []).toEqual(pools);
});

test('a sink takes the water of the far part, and of the near part too where that falls away', () => {
  const sink: Fitting = {
    id: 'sink',
    kind: 'sink',
    at: 1000,
    length: 400,
    width: 400,
    bowlDepth: 200,
    spray: false,
    rackSlide: null,
    waste: null,
  };
  const found = placed({
    fittings: [sink],
    deck: { kind: 'heights', heights: [864, 854, 874] },
    legs: [
      { length: 1000, turnDeg: 0 },
      { length: 1000, turnDeg: 0 },
    ],
  });
  expect(found.water?.stretches.map(({ from, to, runsTo }) => [from, to, runsTo])).toEqual([
    [0, 800, 'sink'],
    [1200, 2000, 'sink'],
  ]);
  expect(found.water?.leastSlope).toBeCloseTo(0.01, 9);
});

test('a table in a mirror keeps its lengths, and its edges change hands', () => {
  const legs = [
    { length: 2000, turnDeg: 0 },
    { length: 1000, turnDeg: 60 },
  ];
  const [seen, mirrored] = [placed({ legs }), placed({ legs }, (plan) => transformPlan(plan, { mirror: true }))];
  expect(mirrored.table.operatorSide).toBe('left');
  for (const [i, p] of seen.operatorEdge.entries()) {
    expect(mirrored.operatorEdge[i]?.x).toBeCloseTo(-p.x, 6);
    expect(mirrored.operatorEdge[i]?.y).toBeCloseTo(p.y, 6);
  }
});
