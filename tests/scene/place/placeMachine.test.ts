import { describe, expect, test } from 'vitest';
import { type ControlsPosition, type DataSheet, FAMILIES, SIDES } from '../../../src/catalog';
import { area, cross, distance, dot, rightOf, sub } from '../../../src/geometry';
import { UNKNOWN_HOOK_UP } from '../../../src/plan';
import { deriveScene, type PlacedMachine } from '../../../src/scene';
import { first, roomPlan } from '../plans';

const base = first(FAMILIES);

/** A machine 700 × 600 at the middle of the room, with controls of one's own. */
function placed(rotationDeg: number, changes: Partial<DataSheet> = {}, controls = 'front-left'): PlacedMachine {
  const sheet: DataSheet = { ...base, id: 'own', width: 700, depth: 600, rackLine: { left: 250, right: 320, front: 330 }, ...changes };
  const plan = roomPlan((draft) => {
    draft.sheets = [sheet];
    draft.machines = [{ id: 'machine', sheet: 'own', x: 4000, y: 3000, rotationDeg, controls, electrical: null, hookUp: UNKNOWN_HOOK_UP }];
  });
  return first(deriveScene(plan).machines);
}

test('at rotation 0 the front looks down the paper', () => {
  const { sides, frame, footprint } = placed(0);
  expect(frame.origin).toEqual({ x: 3650, y: 2700 });
  expect(SIDES.map((side) => sides[side].normal)).toEqual([
    { x: -1, y: 0 },
    { x: 1, y: 0 },
    { x: 0, y: 1 },
    { x: 0, y: -1 },
  ]);
  expect(SIDES.map((side) => sides[side].door)).toEqual([{ x: 3650, y: 2950 }, { x: 4350, y: 3020 }, { x: 3980, y: 3300 }, null]);
  expect(area(footprint)).toBe(700 * 600);
});

test('quarter turns are exact', () => {
  const { sides } = placed(90);
  expect(sides.front.normal).toEqual({ x: -1, y: 0 });
  expect(sides.front.edge).toEqual({ a: { x: 3700, y: 2650 }, b: { x: 3700, y: 3350 } });
});

describe.each([0, 90, 180, 270, 33, 200])('turned by %d°', (rotationDeg) => {
  const { sides, frame } = placed(rotationDeg);
  test.each(SIDES)('%s: edge from the left end to the right end of a person who faces it', (side) => {
    const { edge, normal, centre } = sides[side];
    const facing = { x: -normal.x, y: -normal.y };
    expect(dot(sub(edge.b, edge.a), rightOf(facing))).toBeCloseTo(distance(edge.a, edge.b), 6);
    expect(dot(sub(centre, { x: 4000, y: 3000 }), normal)).toBeCloseTo(side === 'left' || side === 'right' ? 350 : 300, 6);
    expect(distance(edge.a, edge.b)).toBeCloseTo(side === 'left' || side === 'right' ? 600 : 700, 6);
  });
  test('connections lie where the data sheet says', () => {
    const machine = placed(rotationDeg);
    for (const { connection, point } of machine.connections) {
      expect(distance(point, frame.origin)).toBeCloseTo(Math.hypot(connection.x, connection.y), 6);
      expect(dot(sub(point, frame.origin), sides.right.normal)).toBeCloseTo(connection.x, 6);
      expect(point.z).toBe(connection.z);
    }
  });
});

const strip = (side: ControlsPosition['side']): ControlsPosition => ({
  id: 'own',
  name: '',
  side,
  from: 50,
  to: 150,
  zFrom: 300,
  zTo: 800,
});

test.each([
  { side: 'front', face: [3700, 3300, 3800, 3300] },
  { side: 'back', face: [3700, 2700, 3800, 2700] },
  { side: 'left', face: [3650, 2750, 3650, 2850] },
  { side: 'right', face: [4350, 2750, 4350, 2850] },
] as const)('controls on the $side are measured from the left or the back edge', ({ side, face: [ax, ay, bx, by] }) => {
  const { controls } = placed(0, { controls: [strip(side)] }, 'own');
  expect([controls?.face.a, controls?.face.b]).toEqual(
    expect.arrayContaining([
      { x: ax, y: ay },
      { x: bx, y: by },
    ]),
  );
  expect(controls?.centre).toEqual({ x: (ax + bx) / 2, y: (ay + by) / 2, z: 550 });
  expect(area(controls?.reachZone ?? [])).toBeCloseTo(100 * 450, 6);
  const [a, b, c] = controls?.reachZone ?? [];
  if (a === undefined || b === undefined || c === undefined) throw new Error('no zone');
  expect(cross(sub(b, a), sub(c, b))).toBeGreaterThan(0);
});

test('controls at a position that the data sheet does not have', () => expect(placed(0, {}, 'elsewhere').controls).toBeNull());

test('service zones stand before the sides without a table', () => {
  const clearances = { left: 100, right: 0, front: 600, back: 50, above: 20 };
  const zones = placed(0, { clearances }).serviceZones;
  expect(zones.map(({ side, depth, polygon }) => [side, depth, area(polygon)])).toEqual([
    ['left', 100, 100 * 600],
    ['front', 600, 600 * 700],
    ['back', 50, 50 * 700],
  ]);
});

test('a side that needs a single millimetre has a service zone of it', () => {
  const clearances = { left: 0, right: 1, front: 0, back: 0, above: 0 };
  expect(placed(0, { clearances }).serviceZones.map(({ side, depth, polygon }) => [side, depth, area(polygon)])).toEqual([
    ['right', 1, 600],
  ]);
});

test('a collar is a place in the room; a machine without one has none', () => {
  const collar = { id: 'collar', kind: 'collar', x: 350, y: 100, z: 1900, size: 178, note: '' } as const;
  expect(placed(180, { connections: [collar] }).collar).toEqual({ x: 4000, y: 3200, z: 1900 });
  expect(placed(0, { connections: [] }).collar).toBeNull();
});
