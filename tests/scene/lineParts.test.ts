import { describe, expect, test } from 'vitest';
import type { Fitting, Thing } from '../../src/plan';
import { deriveScene } from '../../src/scene/deriveScene';
import { deriveHand } from '../../src/scene/line/deriveHand';
import { deriveInside } from '../../src/scene/line/deriveInside';
import { findDropOff } from '../../src/scene/line/findDropOff';
import { findThingNear } from '../../src/scene/place/findThingNear';
import { countRacks, measureLanding } from '../../src/scene/table/measureLanding';
import { MOTIONS } from '../support/motions';
import { at, rounded, tableAt, thingOf } from './hall';
import { first, linePlan } from './plans';

// ---------------------------------------------------------------- the nearest thing

interface NearRow {
  name: string;
  things: readonly [id: string, x: number, change?: Partial<Thing>][];
  found: string | null;
}

/** Things 400 wide about (x, 0), seen from the origin: their near edge lies at x − 200. */
const NEAR_ROWS: NearRow[] = [
  { name: 'none', things: [], found: null },
  { name: 'one', things: [['a', 1000]], found: 'a' },
  {
    name: 'the nearer, drawn first',
    things: [
      ['a', 1000],
      ['b', 1100],
    ],
    found: 'a',
  },
  {
    name: 'the nearer, drawn last',
    things: [
      ['a', 1100],
      ['b', 1000],
    ],
    found: 'b',
  },
  {
    name: 'of equals the first',
    things: [
      ['a', 1000],
      ['b', -1000],
    ],
    found: 'a',
  },
  { name: 'its edge 3000 off', things: [['a', 3200]], found: 'a' },
  { name: 'its edge farther', things: [['a', 3200.01]], found: null },
  { name: 'for other ware', things: [['a', 1000, { ware: 'soiled' }]], found: null },
  { name: 'for no ware', things: [['a', 1000, { ware: 'none' }]], found: null },
  { name: 'a work table', things: [['a', 1000, { kind: 'work-table' }]], found: 'a' },
  { name: 'shelving', things: [['a', 1000, { kind: 'shelving' }]], found: 'a' },
  {
    name: 'a bin holds no ware',
    things: [
      ['a', 500, { kind: 'bin' }],
      ['b', 1000],
    ],
    found: 'b',
  },
  { name: 'a sink neither', things: [['a', 500, { kind: 'hand-sink' }]], found: null },
];

const cleanThings = (things: NearRow['things']) =>
  things.map(([id, x, change]) => thingOf(x, 0, 400, 300, { id, ware: 'clean', ...change }));

test.each(NEAR_ROWS)('the nearest thing for clean ware: $name', ({ things, found }) => {
  expect(findThingNear(at(0, 0), cleanThings(things), 'clean')?.thing.id ?? null).toBe(found);
});

test('nothing is near no place', () => expect(findThingNear(undefined, cleanThings([['a', 1000]]), 'clean')).toBeNull());

// ---------------------------------------------------------------- landing and drop-off

test.each([
  [1016, 508, 2],
  [1015.9, 508, 1],
  [507.9, 508, 0],
  [0, 508, 0],
  [-200, 508, 0],
  [0.3, 0.1, 3],
])('a length of %d holds racks of %d: %d', (length, pitch, racks) => expect(countRacks(length, pitch)).toBe(racks));

const sink = (from: number, to: number, id = 'sink'): Fitting => ({
  id,
  kind: 'sink',
  at: (from + to) / 2,
  length: to - from,
  width: 400,
  bowlDepth: 200,
  spray: true,
  rackSlide: null,
  waste: null,
});
const part = (kind: 'landing' | 'drop-off', from: number, to: number, id: string = kind): Fitting => ({
  id,
  kind,
  at: (from + to) / 2,
  length: to - from,
});
const scrap = (from: number, to: number): Fitting => ({ ...sink(from, to, 'scrap'), kind: 'scrap' }) as Fitting;

interface LandingRow {
  name: string;
  fittings: readonly Fitting[];
  /** Subject, length, racks of 500, and how far along its middle lies. */
  landing: [string, number, number, number];
}

/** A table of 2000 from (2000, 3000) to the right. */
const LANDING_ROWS: LandingRow[] = [
  { name: 'an empty table', fittings: [], landing: ['table', 2000, 4, 1000] },
  {
    name: 'up to the first sink, whatever the order',
    fittings: [sink(1500, 1900, 'far'), sink(900, 1300)],
    landing: ['table', 900, 1, 450],
  },
  { name: 'up to a scrap opening', fittings: [scrap(1000, 1200)], landing: ['table', 1000, 2, 500] },
  { name: 'up to a drop-off', fittings: [part('drop-off', 1400, 2000)], landing: ['table', 1400, 2, 700] },
  { name: 'a sink over the joint leaves none', fittings: [sink(-100, 400)], landing: ['table', 0, 0, 0] },
  { name: 'a sink beyond the end leaves all', fittings: [sink(2100, 2500)], landing: ['table', 2000, 4, 1000] },
  {
    name: 'an overshelf takes nothing',
    fittings: [{ id: 'shelf', kind: 'overshelf', at: 500, length: 400, depth: 300, height: 1400 }],
    landing: ['table', 2000, 4, 1000],
  },
  { name: 'the one drawn', fittings: [sink(100, 300), part('landing', 600, 1700)], landing: ['landing', 1100, 2, 1150] },
  {
    name: 'of two drawn the nearer',
    fittings: [part('landing', 1000, 1900, 'far'), part('landing', 100, 700, 'near')],
    landing: ['near', 600, 1, 400],
  },
  { name: 'drawn beyond both ends', fittings: [part('landing', -500, 2500)], landing: ['landing', 2000, 4, 1000] },
  { name: 'drawn wholly off the table', fittings: [part('landing', 2200, 2600)], landing: ['landing', 0, 0, 2100] },
];

test.each(LANDING_ROWS)('the landing: $name', ({ fittings, landing: [subject, length, racks, along] }) => {
  const found = measureLanding('clean-landing', tableAt(2000, 3000, 0, { fittings: [...fittings] }), 500);
  expect([found.kind, found.subject, found.length, found.racks]).toEqual(['clean-landing', subject, length, racks]);
  expect(rounded(found.place === null ? [] : [found.place])).toEqual([at(2000 + along, 3000)]);
});

test('no table, no landing', () =>
  expect(measureLanding('soiled-landing', null, 500)).toEqual({
    kind: 'soiled-landing',
    subject: null,
    place: null,
    length: null,
    racks: null,
  }));

interface DropOffRow {
  name: string;
  fittings: readonly Fitting[];
  carts?: readonly [x: number, ware: Thing['ware']][];
  /** Subject, place, length, racks, and how far along the table its ware begins; null for none. */
  dropOff: [string, [number, number], number | null, number | null, number] | null;
}

const DROP_OFF_ROWS: DropOffRow[] = [
  { name: 'an empty table has none', fittings: [], dropOff: null },
  { name: 'the one drawn', fittings: [sink(900, 1300), part('drop-off', 1400, 2000)], dropOff: ['drop-off', [3700, 3000], 600, 1, 1700] },
  {
    name: 'beyond the last hole, whatever the order',
    fittings: [scrap(1000, 1200), sink(400, 900)],
    dropOff: ['table', [3600, 3000], 800, 1, 1600],
  },
  { name: 'just a rack beyond it', fittings: [sink(1000, 1500)], dropOff: ['table', [3750, 3000], 500, 1, 1750] },
  { name: 'less than a rack beyond it', fittings: [sink(1000, 1501)], dropOff: null },
  { name: 'a landing is no hole', fittings: [part('landing', 0, 600)], dropOff: null },
  {
    name: 'a cart for soiled ware beyond the end',
    fittings: [sink(1000, 1501)],
    carts: [[4500, 'soiled']],
    dropOff: ['cart', [4500, 3000], null, null, 2000],
  },
  { name: 'a cart for clean ware is none', fittings: [sink(1000, 1501)], carts: [[4500, 'clean']], dropOff: null },
  {
    name: 'what is drawn goes before a cart',
    fittings: [part('drop-off', 1400, 2000)],
    carts: [[4500, 'soiled']],
    dropOff: ['drop-off', [3700, 3000], 600, 1, 1700],
  },
  { name: 'the far end too', fittings: [sink(400, 900)], carts: [[4500, 'soiled']], dropOff: ['table', [3450, 3000], 1100, 2, 1450] },
];

test.each(DROP_OFF_ROWS)('the drop-off: $name', ({ fittings, carts = [], dropOff }) => {
  const things = carts.map(([x, ware]) => thingOf(x, 3000, 600, 400, { id: 'cart', ware }));
  const found = findDropOff(tableAt(2000, 3000, 0, { fittings: [...fittings] }), things, 500);
  const place = found?.station.place;
  expect(found && [found.station.subject, place && [place.x, place.y], found.station.length, found.station.racks, found.along]).toEqual(
    dropOff,
  );
});

// ---------------------------------------------------------------- hand and inside

test.each([
  { name: 'straight, facing up the paper: from the left', normals: [[0, 1]], soiled: [-1, 0], hand: 'left-to-right' },
  { name: 'straight: from the right', normals: [[0, 1]], soiled: [1, 0], hand: 'right-to-left' },
  {
    name: 'a corner at the left, soiled at the left',
    normals: [
      [-1, 0],
      [0, 1],
    ],
    soiled: [-1, 0],
    hand: 'left-to-right',
  },
  {
    name: 'a corner at the left, soiled at the front',
    normals: [
      [-1, 0],
      [0, 1],
    ],
    soiled: [0, 1],
    hand: 'right-to-left',
  },
  {
    name: 'a corner at the right, soiled at the front',
    normals: [
      [1, 0],
      [0, 1],
    ],
    soiled: [0, 1],
    hand: 'left-to-right',
  },
  {
    name: 'a corner at the right, soiled at the right',
    normals: [
      [1, 0],
      [0, 1],
    ],
    soiled: [1, 0],
    hand: 'right-to-left',
  },
] as const)('the hand: $name', ({ normals, soiled, hand }) => {
  for (const { name, isMirror, move } of MOTIONS) {
    const o = move(at(0, 0));
    const turned = ([x, y]: readonly [number, number]) => ({ x: move(at(x, y)).x - o.x, y: move(at(x, y)).y - o.y });
    const other = hand === 'left-to-right' ? 'right-to-left' : 'left-to-right';
    expect([name, deriveHand({ corner: o, normals: normals.map(turned) }, turned(soiled))]).toEqual([name, isMirror ? other : hand]);
  }
});

describe('the inside of the turn of a machine 737 × 711, from its back left corner', () => {
  const machine = first(deriveScene(linePlan({ family: 'recirculating-hot-water' })).machines);
  const { x, y } = machine.frame.origin;
  test.each([
    { configuration: { kind: 'straight' }, corner: [368.5, 711], normals: [[0, 1]] },
    {
      configuration: { kind: 'corner', side: 'left' },
      corner: [0, 711],
      normals: [
        [-1, 0],
        [0, 1],
      ],
    },
    {
      configuration: { kind: 'corner', side: 'right' },
      corner: [737, 711],
      normals: [
        [1, 0],
        [0, 1],
      ],
    },
  ] as const)('$configuration', ({ configuration, corner: [dx, dy], normals }) => {
    const inside = deriveInside(machine, configuration);
    expect(inside && rounded([inside.corner, ...inside.normals])).toEqual([
      ...rounded([at(x + dx, y + dy)]),
      ...normals.map(([a, b]) => at(a, b)),
    ]);
  });
  test('none', () => expect(deriveInside(machine, { kind: 'none', reason: 'no-table' })).toBeNull());
});
