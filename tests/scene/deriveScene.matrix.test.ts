import { describe, expect, test } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { distance, dot, leftOf, rightOf, sub } from '../../src/geometry';
import { createLinePlan, LINE_CONFIGURATIONS, type Plan, transformPlan } from '../../src/plan';
import { deriveScene, floorObstacles, type Line, type Scene } from '../../src/scene';
import { first } from './plans';

const HANDS = ['left-to-right', 'right-to-left'] as const;
const ROTATIONS = [0, 45, 90, 137, 180, 225, 270, 341];
const MATRIX = FAMILIES.flatMap(({ id: family }) =>
  LINE_CONFIGURATIONS.flatMap((configuration) => HANDS.map((hand) => ({ family, configuration, hand }))),
);

describe.each(MATRIX)('$family, $configuration, $hand', (row) => {
  const unturned = createLinePlan(row);
  const measured = invariants(deriveScene(unturned));

  test.each(ROTATIONS)('turned by %d°', (rotationDeg) => {
    const scene = deriveScene(createLinePlan({ ...row, rotationDeg, at: { x: 12_345, y: -6789 } }));
    const line = first(scene.lines);
    expect(line.configuration).toEqual(
      row.configuration === 'straight' ? { kind: 'straight' } : { kind: 'corner', side: row.configuration.split('-')[0] },
    );
    expect(line.hand).toBe(row.hand);
    expectFlush(scene);
    expectInside(line);
    expectStand(scene, line);
    expectWays(line);
    expectSame(invariants(scene), measured);
  });

  test('in a mirror', () => {
    const scene = deriveScene(transformPlan(unturned, { mirror: true, rotateDeg: 30, move: { x: 500, y: 700 } }));
    expect(first(scene.lines).hand).toBe(HANDS.find((hand) => hand !== row.hand));
    expectFlush(scene);
    expectSame(invariants(scene), mirrored(measured));
  });

  test('with its room walked the other way and its lists reversed', () => {
    expectSame(invariants(deriveScene(reversed(unturned))), measured);
  });
});

function expectFlush(scene: Scene): void {
  expect(scene.joints).toHaveLength(2);
  for (const joint of scene.joints) {
    expect(joint.hasDoor).toBe(true);
    for (const value of [joint.gap, joint.offset, joint.angleDeg, joint.deckStep]) expect(value).toBeCloseTo(0, 6);
  }
}

/** The corner of the inside is the footprint's corner nearest to the controls, and the controls look into it. */
function expectInside({ inside, machine, configuration }: Line): void {
  if (inside === null || machine.controls === null) throw new Error('no inside, or no controls');
  const { centre, normal } = machine.controls;
  expect(inside.normals.some((n) => dot(n, normal) > 1 - 1e-9)).toBe(true);
  if (configuration.kind === 'straight') return;
  const nearest = machine.footprint.toSorted((a, b) => distance(a, centre) - distance(b, centre))[0];
  expect(distance(nearest ?? centre, inside.corner)).toBeCloseTo(0, 6);
}

/** A free place inside, within the functional reach of a small woman, 677 mm: MIL-STD-1472G App. B. */
function expectStand(scene: Scene, { stand, inside }: Line): void {
  if (stand === null || inside === null) throw new Error('nowhere to stand');
  for (const normal of inside.normals) expect(dot(sub(stand.centre, inside.corner), normal)).toBeGreaterThan(-1e-6);
  for (const { polygon } of floorObstacles(scene)) expect(distanceTo(polygon, stand.centre)).toBeGreaterThan(stand.width / 2 - 1e-5);
  expect(stand.reach).toBeLessThan(677);
}

/** Outside a convex polygon that is walked clockwise on the paper: the greatest distance from the lines of its edges is a lower bound. */
function distanceTo(polygon: readonly { x: number; y: number }[], p: { x: number; y: number }): number {
  let least = Infinity;
  let isOutside = false;
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const d = { x: (b.x - a.x) / distance(a, b), y: (b.y - a.y) / distance(a, b) };
    if (dot(sub(p, a), leftOf(d)) > 0) isOutside = true;
    const t = Math.max(0, Math.min(distance(a, b), dot(sub(p, a), d)));
    least = Math.min(least, distance(p, { x: a.x + d.x * t, y: a.y + d.y * t }));
  }
  return isOutside ? least : -least;
}

/** Ware goes from drop-off to storage without a jump, and the rack turns only at a corner, toward the clean side. */
function expectWays({ ways, stations, hand, configuration }: Line): void {
  expect(first(ways.soiled)).toEqual(stations[0]?.place);
  expect(ways.soiled.at(-1)).toEqual(first(ways.rack));
  expect(ways.rack.at(-1)).toEqual(first(ways.clean));
  expect(ways.clean.at(-1)).toEqual(stations.at(-1)?.place);
  const [a, b, c] = ways.rack;
  if (a === undefined || b === undefined || c === undefined) throw new Error('the rack does not pass');
  // Seen by the operator, who faces the machine, racks of a left-to-right line come in at the left; in a corner they turn to the operator's side, the right.
  const turn = dot(sub(c, b), rightOf(sub(b, a)));
  const corner = hand === 'left-to-right' ? 1 : -1;
  expect(Math.abs(turn) < 1e-4 ? 0 : Math.sign(turn)).toBe(configuration.kind === 'straight' ? 0 : corner);
}

/** Everything that no motion may change, as plain numbers and words. */
function invariants(scene: Scene) {
  const line = first(scene.lines);
  const machine = first(scene.machines);
  const tables = [...scene.tables].sort((a, b) => a.table.id.localeCompare(b.table.id));
  return {
    area: scene.room.areaMm2,
    walls: scene.room.walls.map(({ length }) => length).sort((a, b) => a - b),
    sides: {
      left: sideNumbers(machine.sides.left),
      right: sideNumbers(machine.sides.right),
      front: sideNumbers(machine.sides.front),
      back: sideNumbers(machine.sides.back),
    },
    service: machine.serviceZones.map(({ depth }) => depth),
    tables: tables.map(({ table, length, water, nodes }) => ({
      id: table.id,
      length,
      water: water?.leastSlope,
      pools: water?.pools.length,
      z: nodes.map(({ z }) => z),
    })),
    reach: line.stand?.reach,
    stations: line.stations.map(({ kind, subject, length, racks }) => ({ kind, subject, length, racks })),
    ways: Object.values(line.ways).map((way) => way.slice(1).map((p, i) => distance(p, way[i] ?? p))),
    hoods: scene.hoods.map(({ covers }) => covers.map(({ overhang }) => ({ ...overhang }))),
    runs: scene.runs.map(({ length, bends, fan }) => ({
      length,
      bends: bends.map(({ at, angleDeg }) => ({ at, angleDeg })),
      isOnRun: fan?.isOnRun,
    })),
    marks: scene.marks,
  };
}

type Invariants = ReturnType<typeof invariants>;

const sideNumbers = ({ isAgainstWall, wallDistance, table, door, edge }: Scene['machines'][number]['sides']['left']) => ({
  isAgainstWall,
  wallDistance,
  table,
  hasDoor: door !== null,
  length: distance(edge.a, edge.b),
});

/** Left and right change places; service zones come in the order of the sides. */
function mirrored(value: Invariants): Invariants {
  const { left, right, front, back } = value.sides;
  const hoods = value.hoods.map((covers) => covers.map((o) => ({ ...o, left: o.right, right: o.left })));
  return { ...value, sides: { left: right, right: left, front, back }, hoods };
}

/** The same room walked the other way: a wall then begins at its other corner, and openings are measured from there. */
function reversed(plan: Plan): Plan {
  const { outline, openings } = plan.room;
  const turned = outline.map((corner, i) => ({ ...corner, id: outline[(i + outline.length - 1) % outline.length]?.id ?? '' })).reverse();
  const lengthOf = (id: string) => {
    const i = outline.findIndex((corner) => corner.id === id);
    const [a, b] = [outline[i], outline[(i + 1) % outline.length]];
    return a === undefined || b === undefined ? 0 : distance(a, b);
  };
  return {
    ...plan,
    room: {
      ...plan.room,
      outline: turned,
      openings: openings.map((item) => ({ ...item, from: lengthOf(item.wall) - item.from - item.width })),
    },
    tables: plan.tables.toReversed(),
  };
}

/** Like toEqual, with numbers to the micrometre. */
function expectSame(found: unknown, expected: unknown): void {
  expect(rounded(found)).toEqual(rounded(expected));
}

const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value ?? null, (_key, item: unknown) => (typeof item === 'number' ? Math.round(item * 1e3) / 1e3 + 0 : item)));
