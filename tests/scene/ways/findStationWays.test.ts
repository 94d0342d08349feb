import { expect, test } from 'vitest';
import type { Polygon } from '../../../src/geometry';
import type { Opening, Thing } from '../../../src/plan';
import { findStationWays, type StationWay } from '../../../src/scene/ways/findStationWays';
import { MOTIONS } from '../../support/motions';
import { AS_DRAWN, at, box, type Corner, HALL, lineOf, type Move, roomOf, solidOf, thingOf } from '../hall';

/** A thing about its centre, with what else a row says of it. */
type Standing = readonly [id: string, x: number, y: number, width: number, depth: number, change?: Partial<Thing>];

interface Row {
  name: string;
  openings?: readonly Partial<Opening>[];
  things?: readonly Standing[];
  bodies?: readonly Polygon[];
  /** Where operators stand who step back no farther. */
  operators?: readonly Corner[];
  enough?: number;
  pass?: number;
  /** Of each place how wide its way is, and, where there are carts, how wide while they are rolled out. */
  ways: Record<string, number | readonly [number, number | null]>;
}

/** In the middle of the left wall. */
const DOOR: Partial<Opening> = { id: 'door', wall: '3', from: 1550, width: 900 };
const OTHER: Partial<Opening> = { id: 'other', wall: '1', from: 1550, width: 900 };
const SINK = { kind: 'hand-sink' } as const;
const CART = { kind: 'cart' } as const;
/** A hand sink at the upper wall, its front at y = 400. */
const AT_WALL: Standing = ['sink', 4500, 200, 400, 400, SINK];
/** From above and from below, so that a gap of so much is left about y = 2000. */
const narrowing = (x: number, gap: number): readonly Polygon[] => [
  box(x, 0, x + 100, 2000 - gap / 2),
  box(x, 2000 + gap / 2, x + 100, 4000),
];

// The hall is 6000 × 4000. Asked for 1000; a person stands in 700.
const ROWS: Row[] = [
  { name: 'no place to go to', openings: [DOOR], ways: {} },
  { name: 'a free floor: as much as is asked for', openings: [DOOR], things: [AT_WALL], ways: { sink: 1000 } },
  { name: 'more is asked for', openings: [DOOR], things: [AT_WALL], enough: 1300, ways: { sink: 1300 } },
  {
    name: 'a gap of 800 between the door and the place',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: narrowing(2500, 800),
    ways: { sink: 800 },
  },
  { name: 'the gap is behind the place', openings: [DOOR], things: [AT_WALL], bodies: narrowing(5500, 800), ways: { sink: 1000 } },
  { name: 'a gap of 999.9', openings: [DOOR], things: [AT_WALL], bodies: narrowing(2500, 999.9), ways: { sink: 999.9 } },
  { name: 'no gap', openings: [DOOR], things: [AT_WALL], bodies: narrowing(2500, 0), ways: { sink: 0 } },
  { name: 'a door of 600 is another question', openings: [{ ...DOOR, from: 1700, width: 600 }], things: [AT_WALL], ways: { sink: 1000 } },
  {
    name: 'the door at the other end has the wider way',
    openings: [DOOR, OTHER],
    things: [AT_WALL],
    bodies: narrowing(2500, 800),
    ways: { sink: 1000 },
  },
  {
    name: 'the first door has the wider way',
    openings: [DOOR, OTHER],
    things: [AT_WALL],
    bodies: [...narrowing(2500, 800), ...narrowing(5500, 700)],
    ways: { sink: 800 },
  },
  {
    name: 'the second of three doors has the wider way, and the last is a window',
    openings: [DOOR, { ...OTHER, id: 'second', wall: '0', from: 3000 }, { ...OTHER, kind: 'pass-window' }],
    things: [AT_WALL],
    bodies: [...narrowing(2500, 700), ...narrowing(5500, 800)],
    ways: { sink: 1000 },
  },
  {
    name: 'each of two sinks by the door that is better for it',
    openings: [DOOR, OTHER],
    things: [AT_WALL, ['other-sink', 1200, 200, 400, 400, SINK]],
    bodies: narrowing(2500, 800),
    ways: { sink: 1000, 'other-sink': 1000 },
  },
  {
    name: 'from the operator, who has come in, where the door is shut off',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [...narrowing(2500, 500), ...narrowing(3500, 900)],
    operators: [[3000, 2000]],
    ways: { sink: 900 },
  },
  {
    name: 'from the second operator',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [...narrowing(2500, 500), ...narrowing(3500, 900)],
    operators: [
      [1000, 2000],
      [3000, 2000],
    ],
    ways: { sink: 900 },
  },
  // The sink’s front is 200 wide, its middle 200 from the left body. Where a person of 400 stands, the place narrows no way.
  {
    name: 'a place 200 from a body at its side: 400 wide, less than a person stands in',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [box(4200, 0, 4300, 1500)],
    ways: { sink: 400 },
  },
  {
    name: 'the same for a person who stands in 400',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [box(4200, 0, 4300, 1500)],
    pass: 400,
    ways: { sink: 1000 },
  },
  {
    name: 'the same for one who needs a tenth more',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [box(4200, 0, 4300, 1500)],
    pass: 400.1,
    ways: { sink: 400 },
  },
  // The other door’s leaf is 900 long; hung at (6000, 1550) it stands open to (5100, 1550), 702 from the body’s corner at (4400, 1500).
  {
    name: 'past the leaf of another door: between it and a body',
    openings: [DOOR, { ...OTHER, kind: 'door', swing: 'in', hinge: 'start' }],
    things: [['sink', 5500, 200, 400, 400, SINK]],
    bodies: [box(4300, 0, 4400, 1500)],
    // 700 across and 50 down; from its own door it hangs 50 higher, and leaves but 700.
    ways: { sink: 701.783 },
  },
  {
    name: 'hung at the other end it is out of the way',
    openings: [DOOR, { ...OTHER, kind: 'door', swing: 'in', hinge: 'end' }],
    things: [['sink', 5500, 200, 400, 400, SINK]],
    bodies: [box(4300, 0, 4400, 1550)],
    ways: { sink: 1000 },
  },
  // Asked for 1400 the bay is 1400 wide, and the leaf hangs at its edge: (0, 2700) or (0, 1300), 250 aside of where it is.
  {
    name: 'past the door’s own leaf, which stands aside with its jamb: 1100 from (900, 2700) to (900, 1600)',
    openings: [{ ...DOOR, kind: 'door', swing: 'in', hinge: 'start' }],
    things: [AT_WALL],
    bodies: [box(900, 0, 1000, 1600)],
    enough: 1400,
    ways: { sink: 1100 },
  },
  {
    name: 'the same leaf at the other jamb: 1100 from (900, 1300) to (900, 2400)',
    openings: [{ ...DOOR, kind: 'door', swing: 'in', hinge: 'end' }],
    things: [AT_WALL],
    bodies: [box(900, 2400, 1000, 4000)],
    enough: 1400,
    ways: { sink: 1100 },
  },
  {
    name: 'a leaf that opens outward is in nobody’s way',
    openings: [{ ...DOOR, kind: 'door', swing: 'out', hinge: 'start' }],
    things: [AT_WALL],
    bodies: [box(900, 0, 1000, 1600)],
    enough: 1400,
    ways: { sink: 1400 },
  },
  // A door wider than is asked for keeps its leaf where it is: from (0, 2700) to (1400, 2700).
  {
    name: 'a leaf of 1400 where 1000 are asked: 900 from its tip to a body',
    openings: [{ ...DOOR, kind: 'door', swing: 'in', hinge: 'start', from: 1300, width: 1400 }],
    things: [AT_WALL],
    bodies: [box(1400, 0, 1500, 1800)],
    ways: { sink: 900 },
  },
  {
    name: 'carts that stand in nobody’s way',
    openings: [DOOR],
    things: [AT_WALL, ['cart', 1000, 3800, 600, 400, { ...CART, rotationDeg: 180 }]],
    ways: { sink: [1000, 1000] },
  },
  // Parked from 0 to 600 in a gap of 1500 it leaves 900; rolled out by 600 it leaves 300 and 600 behind it.
  {
    name: 'a cart that narrows the way when it is rolled out: 600 behind it',
    openings: [DOOR],
    things: [AT_WALL, ['cart', 2550, 800 + 250, 100, 500, CART]],
    bodies: [box(2500, 0, 2600, 800), box(2500, 2400, 2600, 4000)],
    ways: { sink: [1000, 600] },
  },
  {
    name: 'one that cannot be rolled out changes nothing',
    openings: [DOOR],
    things: [AT_WALL, ['cart', 2550, 1050, 100, 500, CART]],
    bodies: [box(2500, 0, 2600, 800), box(2500, 1700, 2600, 4000)],
    ways: { sink: [400, null] },
  },
];

/** How far the ways in a row go; a place is only known by its subject. */
function waysIn(
  { openings = [], things = [], bodies = [], operators = [], enough = 1000, pass = 700 }: Row,
  move: Move,
): StationWay[] | null {
  const placed = things.map(([id, x, y, width, depth, change]) => thingOf(x, y, width, depth, { ...change, id }, move));
  const solids = [
    ...placed.map(({ thing, polygon }) => solidOf(thing.id, polygon)),
    ...bodies.map((polygon, i) => solidOf(`body-${i}`, polygon, move)),
  ];
  const lines = operators.map(([x, y]) => lineOf({ stand: { centre: move(at(x, y)), width: 700, reach: 0 } }));
  return findStationWays({ room: roomOf(HALL, openings, move), solids, lines, things: placed }, { enough, pass });
}

const MOTIONS_TRIED = ['turned 0°', 'turned 37°', 'mirrored'];

const widthOf = (width: number) => Math.round(width * 1000) / 1000;

test.each(ROWS)('ways to places of work: $name', (row) => {
  // A few motions, for each searches the whole floor anew.
  for (const { name, move } of MOTIONS.filter(({ name }) => MOTIONS_TRIED.includes(name))) {
    const found = (waysIn(row, move) ?? []).map(({ subject, passage, besideCarts }) => [
      subject,
      typeof row.ways[subject] === 'number' && besideCarts === null
        ? widthOf(passage.width)
        : [widthOf(passage.width), besideCarts && widthOf(besideCarts.width)],
    ]);
    expect([name, Object.fromEntries(found)]).toEqual([name, row.ways]);
  }
});

test('no door, no ways; a window is none', () => {
  const row = { name: '', things: [AT_WALL], ways: {} };
  expect(waysIn(row, AS_DRAWN)).toBeNull();
  expect(
    waysIn(
      {
        ...row,
        openings: [
          { ...DOOR, kind: 'window' },
          { ...OTHER, kind: 'pass-window' },
        ],
      },
      AS_DRAWN,
    ),
  ).toBeNull();
  expect(waysIn({ ...row, openings: [{ ...DOOR, kind: 'window' }, OTHER] }, AS_DRAWN)).toHaveLength(1);
});

test('of 25 places, more than one search takes beside ten operators, the last is behind a gap of 500', () => {
  const sinks = Array.from({ length: 24 }, (_, i): Standing => [`sink-${i}`, 600 + 100 * i, 200, 90, 400, SINK]);
  const things: Standing[] = [...sinks, ['last', 5000, 200, 90, 400, SINK]];
  const operators = Array.from({ length: 10 }, (): Corner => [3500, 3000]);
  const found = waysIn({ name: '', openings: [DOOR], things, bodies: narrowing(4000, 500), operators, ways: {} }, AS_DRAWN) ?? [];
  expect(found.map(({ subject, passage }) => [subject, passage.width])).toEqual([...sinks.map(([id]) => [id, 1000]), ['last', 500]]);
});

test('ten operators are asked, not an eleventh', () => {
  const shutOff: Row = {
    name: '',
    openings: [DOOR],
    things: [AT_WALL],
    bodies: [...narrowing(2500, 500), ...narrowing(3500, 900)],
    ways: {},
  };
  const widthFrom = (before: number) => {
    const operators = [...Array.from({ length: before }, (): Corner => [1000, 2000]), [3000, 2000] as const];
    return waysIn({ ...shutOff, operators }, AS_DRAWN)?.[0]?.passage.width;
  };
  expect(widthFrom(9)).toBeCloseTo(900, 6);
  expect(widthFrom(10)).toBeCloseTo(500, 6);
});
