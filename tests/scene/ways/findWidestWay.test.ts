import { expect, test } from 'vitest';
import type { Polygon } from '../../../src/geometry';
import type { Opening } from '../../../src/plan';
import { findWidestWay } from '../../../src/scene/ways/findWidestWay';
import { MOTIONS } from '../../support/motions';
import { at, box, type Corner, HALL, lineOf, type Move, roomOf, rounded, solidOf } from '../hall';
import { first } from '../plans';

interface Row {
  name: string;
  corners?: readonly Corner[];
  openings?: readonly Partial<Opening>[];
  bodies?: readonly Polygon[];
  hanging?: Polygon;
  stand?: Corner | null;
  enough?: number;
  /** Two widths are equal: when they are turned, rounding decides. */
  isExact?: boolean;
  /** The opening, its clear width and the aisle after it, no wider than is asked; null for no way. */
  way: { opening: string; door: number; aisle: number } | null;
}

const DOOR: Partial<Opening> = { id: 'door', wall: '3', from: 1550, width: 900 };
const OTHER: Partial<Opening> = { id: 'other', wall: '1', from: 1550, width: 900 };
/** From above and from below, so that a gap of so much is left about y = 2000. */
const narrowing = (x: number, gap: number): readonly Polygon[] => [
  box(x, 0, x + 100, 2000 - gap / 2),
  box(x, 2000 + gap / 2, x + 100, 4000),
];

// The hall is 6000 × 4000; the operator stands in the middle with his back to nothing, and asks for 1200.
const ROWS: Row[] = [
  { name: 'nobody stands there', openings: [DOOR], stand: null, way: null },
  { name: 'no opening', openings: [], way: null },
  {
    name: 'a window is no way',
    openings: [
      { ...DOOR, kind: 'window' },
      { ...OTHER, kind: 'pass-window' },
    ],
    way: null,
  },
  { name: 'a free floor', openings: [DOOR], way: { opening: 'door', door: 900, aisle: 1200 } },
  { name: 'a door is a way', openings: [{ ...DOOR, kind: 'door', swing: 'in' }], way: { opening: 'door', door: 900, aisle: 1200 } },
  { name: 'behind the door a gap of 800', openings: [DOOR], bodies: narrowing(1500, 800), way: { opening: 'door', door: 900, aisle: 800 } },
  {
    name: 'a gap of 950, wider than the door: the aisle without its jambs',
    openings: [DOOR],
    bodies: narrowing(1500, 950),
    way: { opening: 'door', door: 900, aisle: 950 },
  },
  {
    name: 'a gap just as wide as the door',
    openings: [DOOR],
    bodies: narrowing(1500, 900),
    way: { opening: 'door', door: 900, aisle: 900 },
  },
  {
    name: 'a body so near the door that one comes no farther: 300 between it and the jamb',
    openings: [DOOR],
    bodies: [box(300, 1000, 400, 3000)],
    way: { opening: 'door', door: 900, aisle: 300 },
  },
  {
    name: 'a door wider than is asked: what is behind it is measured between its jambs',
    openings: [{ ...DOOR, from: 1300, width: 1400 }],
    bodies: narrowing(1500, 1100),
    way: { opening: 'door', door: 1400, aisle: 1100 },
  },
  { name: 'a gap that is shut', openings: [DOOR], bodies: narrowing(1500, 0), way: { opening: 'door', door: 900, aisle: 0 } },
  {
    name: 'under what hangs below the heads there is no way',
    openings: [DOOR],
    hanging: box(1500, 0, 1600, 4000),
    way: { opening: 'door', door: 900, aisle: 0 },
  },
  {
    name: 'of two doors the one with the wider aisle, although it comes second',
    openings: [DOOR, OTHER],
    bodies: narrowing(1500, 700),
    way: { opening: 'other', door: 900, aisle: 1200 },
  },
  {
    name: 'of two doors the first, where the second’s aisle is narrower',
    openings: [DOOR, OTHER],
    bodies: narrowing(4500, 700),
    way: { opening: 'door', door: 900, aisle: 1200 },
  },
  {
    name: 'of two equal doors the first',
    openings: [OTHER, DOOR],
    isExact: true,
    way: { opening: 'other', door: 900, aisle: 1200 },
  },
  {
    name: 'a wider aisle behind a narrow door counts no more than the door',
    openings: [{ ...DOOR, from: 1650, width: 700 }, OTHER],
    bodies: narrowing(4500, 800),
    way: { opening: 'other', door: 900, aisle: 800 },
  },
  {
    name: 'a window before a door is passed over',
    openings: [{ ...DOOR, id: 'window', kind: 'window' }, OTHER],
    way: { opening: 'other', door: 900, aisle: 1200 },
  },
  {
    name: 'asked for less, no more is told apart: 600 of 800',
    openings: [DOOR],
    bodies: narrowing(1500, 800),
    enough: 600,
    way: { opening: 'door', door: 900, aisle: 600 },
  },
];

const STAND: Corner = [3000, 2000];

/** Steps back from y = 500 down the paper: to 1850 or 2000, in the middle of the hall. */
const wayIn = ({ corners = HALL, openings = [], bodies = [], hanging, stand = STAND, enough = 1200 }: Row, move: Move) => {
  const [o, down] = [move(at(0, 0)), move(at(0, 1))];
  const inside = { corner: move(at(3000, 500)), normals: [{ x: down.x - o.x, y: down.y - o.y }] };
  const solids = bodies.map((polygon, i) => solidOf(`body-${i}`, polygon, move));
  if (hanging !== undefined) solids.push(solidOf('hanging', hanging, move, 1900));
  const line = lineOf({ inside, stand: stand === null ? null : { centre: move(at(...stand)), width: 700, reach: 0 } });
  return findWidestWay({ room: roomOf(corners, openings, move), solids }, line, enough);
};

test.each(ROWS)('the widest way in: $name', (row) => {
  for (const { name, move } of row.isExact ? MOTIONS.slice(0, 1) : MOTIONS) {
    const way = wayIn(row, move);
    const found = way && {
      opening: way.opening.opening.id,
      door: Math.round(way.door * 1000) / 1000,
      aisle: Math.round(Math.min(way.aisle.width, row.enough ?? 1200) * 1000) / 1000,
    };
    expect([name, found]).toEqual([name, row.way]);
  }
});

test('it leads to the place one step back, and is narrowest between the two bodies', () => {
  const way = wayIn({ ...first(ROWS), stand: STAND, openings: [DOOR], bodies: narrowing(1500, 800) }, (p) => p);
  // Steps of 75 from 500: 1925 leaves 1925 above, 2000 leaves 2000 on both sides.
  expect(way && rounded([way.to])).toEqual([at(3000, 2000)]);
  const { a, b } = way?.aisle.pinch ?? { a: at(0, 0), b: at(0, 0) };
  expect([a.y, b.y].toSorted((one, other) => one - other)).toEqual([1600, 2400]);
  expect(a.x).toBeCloseTo(b.x, 6);
});
