import { describe, expect, test } from 'vitest';
import { add, area, scale, signedArea } from '../../../src/geometry';
import { type Opening, type Plan, UNKNOWN_FLOOR_WASTE } from '../../../src/plan';
import { createSolid, deriveScene } from '../../../src/scene';
import { first, roomPlan } from '../plans';

/** In inches: an L of 85 ft². */
const L_ROOM = [
  [0, 0],
  [144, 0],
  [144, 60],
  [60, 60],
  [60, 120],
  [0, 120],
] as const;

const IN = 25.4;

const lRoom = (isReversed: boolean): Plan =>
  roomPlan((draft) => {
    const outline = L_ROOM.map(([x, y], i) => ({ id: `c${i}`, x: x * IN, y: y * IN }));
    draft.room.outline = isReversed ? outline.reverse() : outline;
  });

describe.each([false, true])('L room, walked the other way: %s', (isReversed) => {
  const { room } = deriveScene(lRoom(isReversed));
  test('area of 85 ft², outline of positive area', () => {
    expect(room.areaMm2).toBeCloseTo(12_240 * IN * IN, 3);
    expect(signedArea(room.outline)).toBeGreaterThan(0);
  });
  test('walls keep the order of the plan and look inward', () => {
    expect(room.walls.map(({ id }) => id)).toEqual(
      isReversed ? ['c5', 'c4', 'c3', 'c2', 'c1', 'c0'] : ['c0', 'c1', 'c2', 'c3', 'c4', 'c5'],
    );
    expect(room.walls.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(528 * IN, 6);
    for (const { a, b, inward } of room.walls) {
      const middle = scale(add(a, b), 0.5);
      const [x, y] = [(middle.x + inward.x) / IN, (middle.y + inward.y) / IN];
      expect(x > 0 && y > 0 && ((x < 144 && y < 60) || (x < 60 && y < 120))).toBe(true);
    }
  });
});

const opening = (changes: Partial<Opening>): Opening => ({
  id: 'door',
  kind: 'door',
  wall: 'wall-1',
  from: 1000,
  width: 900,
  height: 2032,
  sill: 0,
  swing: 'in',
  hinge: 'start',
  ...changes,
});

const placedOpening = (changes: Partial<Opening>) =>
  first(deriveScene(roomPlan((draft) => void (draft.room.openings = [opening(changes)]))).room.openings);

test('a door lies on its wall, from its start', () => {
  const { segment, centre, isWay } = placedOpening({});
  expect(segment).toEqual({ a: { x: 1000, y: 0 }, b: { x: 1900, y: 0 } });
  expect(centre).toEqual({ x: 1450, y: 0 });
  expect(isWay).toBe(true);
});

test.each([
  { name: 'hinged at its start', changes: {}, hinges: [[1000, 0]], radius: 900 },
  { name: 'hinged at its end', changes: { hinge: 'end' }, hinges: [[1900, 0]], radius: 900 },
  {
    name: 'two leaves',
    changes: { kind: 'double-door', width: 1600 },
    hinges: [
      [1000, 0],
      [2600, 0],
    ],
    radius: 800,
  },
  { name: 'outward', changes: { swing: 'out' }, hinges: [], radius: 0 },
  { name: 'no leaf', changes: { kind: 'cased-opening' }, hinges: [], radius: 0 },
] as const)('sweep: $name', ({ changes, hinges, radius }) => {
  const { sweep } = placedOpening(changes);
  expect(sweep.map((fan) => [fan[0]?.x, fan[0]?.y])).toEqual(hinges);
  for (const fan of sweep) {
    // A quarter of a disc, a little less for its chords, all of it on the room's side.
    expect(area(fan)).toBeGreaterThan(0.997 * (Math.PI / 4) * radius ** 2);
    expect(area(fan)).toBeLessThan((Math.PI / 4) * radius ** 2);
    expect(fan.every(({ x, y }) => y >= -1e-9 && x >= 1000 - 1e-9 && x <= 2600 + 1e-9)).toBe(true);
  }
});

test.each([
  ['door', true],
  ['double-door', true],
  ['cased-opening', true],
  ['pass-window', false],
  ['window', false],
] as const)('people walk through a %s: %s', (kind, isWay) => expect(placedOpening({ kind }).isWay).toBe(isWay));

test('columns, drains and stubs', () => {
  const { room, solids } = deriveScene(
    roomPlan((draft) => {
      draft.room.ceilingHeight = null;
      draft.room.columns = [{ id: 'column', x: 3000, y: 2000, width: 400, depth: 200, rotationDeg: 90 }];
      draft.room.floorDrains = [
        { id: 'sink', kind: 'floor-sink', x: 500, y: 600, size: 305, waste: UNKNOWN_FLOOR_WASTE },
        { id: 'drain', kind: 'floor-drain', x: 900, y: 600, size: 200, waste: UNKNOWN_FLOOR_WASTE },
      ];
      draft.room.stubs = [{ id: 'stub', kind: 'hot-water', x: 100, y: 0, z: 450 }];
    }),
  );
  const column = first(room.columns).polygon;
  expect([Math.min(...column.map(({ x }) => x)), Math.max(...column.map(({ x }) => x))]).toEqual([2900, 3100]);
  expect(solids).toEqual([createSolid({ owner: 'column', kind: 'column', pieces: [column], zFrom: 0, zTo: 3000 })]);
  expect(first(solids).bounds).toEqual({ minX: 2900, maxX: 3100, minY: 1800, maxY: 2200 });
  expect(first(solids).floor.map(({ polygon }) => polygon)).toEqual([column]);
  expect(room.floorDrains.map(({ polygon }) => Math.round(area(polygon)))).toEqual([
    305 ** 2,
    Math.round(12 * Math.sin(Math.PI / 12) * 100 ** 2),
  ]);
  expect(first(room.stubs).point).toEqual({ x: 100, y: 0, z: 450 });
});
