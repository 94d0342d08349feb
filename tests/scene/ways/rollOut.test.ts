import { expect, test } from 'vitest';
import type { Polygon } from '../../../src/geometry';
import { rollOut } from '../../../src/scene/ways/rollOut';
import { MOTIONS } from '../../support/motions';
import { AS_DRAWN, box, HALL, type Move, roomOf, rounded, solidOf, thingOf } from '../hall';

interface Cart {
  id: string;
  at: readonly [x: number, y: number];
  rotationDeg?: number;
}

interface Row {
  name: string;
  carts: readonly Cart[];
  /** Other bodies by their owners. */
  bodies?: Record<string, Polygon>;
  /** Where the carts stand that could be rolled out, in this order. */
  out: Record<string, Polygon>;
}

/** 600 wide and 400 deep, in a hall of 6000 × 4000; unturned the front looks down the paper. */
const ROWS: Row[] = [
  { name: 'no cart', carts: [], out: {} },
  { name: 'by its own depth to its front', carts: [{ id: 'a', at: [2000, 1000] }], out: { a: box(1700, 1200, 2300, 1600) } },
  {
    name: 'turned a quarter clockwise its front looks left',
    carts: [{ id: 'a', at: [2000, 1000], rotationDeg: 90 }],
    out: { a: box(1400, 700, 1800, 1300) },
  },
  {
    name: 'not where it would touch what stands 400 before it',
    carts: [{ id: 'a', at: [2000, 1000] }],
    bodies: { shelf: box(1000, 1600, 3000, 2000) },
    out: {},
  },
  {
    name: 'a hundredth of a millimetre before what stands 400.01 before it',
    carts: [{ id: 'a', at: [2000, 1000] }],
    bodies: { far: box(5000, 3000, 5500, 3500), shelf: box(1000, 1600.01, 3000, 2000) },
    out: { a: box(1700, 1200, 2300, 1600) },
  },
  {
    name: 'not beside what touches its way from the right',
    carts: [{ id: 'a', at: [2000, 1000] }],
    bodies: { far: box(5000, 3000, 5500, 3500), shelf: box(2300, 1300, 3000, 1400) },
    out: {},
  },
  {
    name: 'its own body is in nobody’s way',
    carts: [{ id: 'a', at: [2000, 1000] }],
    bodies: { a: box(1700, 800, 2300, 1200) },
    out: { a: box(1700, 1200, 2300, 1600) },
  },
  { name: 'up to the wall', carts: [{ id: 'a', at: [2000, 3400] }], out: { a: box(1700, 3600, 2300, 4000) } },
  { name: 'not through it by a hundredth', carts: [{ id: 'a', at: [2000, 3400.01] }], out: {} },
  {
    name: 'of two that face each other the first',
    carts: [
      { id: 'a', at: [2000, 1000] },
      { id: 'b', at: [2000, 2000], rotationDeg: 180 },
    ],
    out: { a: box(1700, 1200, 2300, 1600) },
  },
  {
    name: 'in the other order the other',
    carts: [
      { id: 'b', at: [2000, 2000], rotationDeg: 180 },
      { id: 'a', at: [2000, 1000] },
    ],
    out: { b: box(1700, 1400, 2300, 1800) },
  },
  {
    name: 'one that cannot be takes no floor from the next',
    carts: [
      { id: 'a', at: [2000, 3500] },
      { id: 'b', at: [2500, 3300], rotationDeg: 90 },
      { id: 'c', at: [4000, 1000] },
    ],
    out: { b: box(1900, 3000, 2300, 3600), c: box(3700, 1200, 4300, 1600) },
  },
];

const rolledOut = ({ carts, bodies = {} }: Row, move: Move) =>
  rollOut(
    carts.map(({ id, at: [x, y], rotationDeg = 0 }) => thingOf(x, y, 600, 400, { id, rotationDeg }, move)),
    Object.entries(bodies).flatMap(([owner, polygon]) => solidOf(owner, polygon, move).floor),
    roomOf(HALL, [], move),
  );

test.each(ROWS)('carts rolled out: $name', (row) => {
  const found = rolledOut(row, AS_DRAWN);
  expect(found.map(({ owner }) => owner)).toEqual(Object.keys(row.out));
  expect(found.map(({ polygon }) => placesOf(polygon))).toEqual(Object.values(row.out).map(placesOf));
  expect(found.every(({ body, polygon }) => body.polygon === polygon)).toBe(true);
  // What touches within rounding may be free when it is turned, so that only the rest is.
  for (const { name, move } of row.name.startsWith('not') ? [] : MOTIONS) {
    const moved = (polygon: Polygon) => placesOf(polygon.map(move));
    expect([name, ...rolledOut(row, move).map(({ polygon }) => placesOf(polygon))]).toEqual([name, ...Object.values(row.out).map(moved)]);
  }
});

/** Corners whatever their order. */
const placesOf = (polygon: Polygon) =>
  rounded(polygon)
    .map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`)
    .sort();
