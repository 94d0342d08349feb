import { describe, expect, test } from 'vitest';
import type { Fitting, Plan, Thing } from '../../../src/plan';
import { deriveScene, type Station, type StationKind } from '../../../src/scene';
import { first, linePlan, tableOf } from '../plans';

interface Row {
  name: string;
  change: (draft: Plan) => unknown;
  kind: StationKind;
  expected: Partial<Station>;
}

const sink = (at: number, spray = true): Fitting => ({
  id: 'sink',
  kind: 'sink',
  at,
  length: 500,
  width: 500,
  bowlDepth: 200,
  spray,
  rackSlide: null,
  waste: null,
});
const soiled = (draft: Plan) => tableOf(draft, 'soiled-table');

/** Soiled table 2900 long: landing of 1530, sink, scrap, drop-off of 660. Clean table 1600 long. Racks take 508. */
const ROWS: Row[] = [
  { name: 'the landing drawn', kind: 'soiled-landing', change: () => {}, expected: { subject: 'soiled-landing', length: 1530, racks: 3 } },
  {
    name: 'no landing drawn: up to the first sink',
    kind: 'soiled-landing',
    change: (draft) => (soiled(draft).fittings = [sink(1300)]),
    expected: { subject: 'soiled-table', length: 1050, racks: 2 },
  },
  {
    name: 'a length of exactly two racks holds two',
    kind: 'soiled-landing',
    change: (draft) => (soiled(draft).fittings = [sink(1016 + 250)]),
    expected: { length: 1016, racks: 2 },
  },
  {
    name: 'a hair less holds one',
    kind: 'soiled-landing',
    change: (draft) => (soiled(draft).fittings = [sink(1015 + 250)]),
    expected: { length: 1015, racks: 1 },
  },
  {
    name: 'a sink at the machine leaves no landing',
    kind: 'soiled-landing',
    change: (draft) => (soiled(draft).fittings = [sink(200)]),
    expected: { subject: 'soiled-table', length: 0, racks: 0 },
  },
  {
    name: 'an empty table is all landing',
    kind: 'clean-landing',
    change: (draft) => (tableOf(draft, 'clean-table').fittings = []),
    expected: { subject: 'clean-table', length: 1600, racks: 3 },
  },
  {
    name: 'a landing drawn past the table’s end counts as far as the table goes',
    kind: 'clean-landing',
    change: (draft) => (tableOf(draft, 'clean-table').fittings = [{ id: 'landing', kind: 'landing', at: 1600, length: 1600 }]),
    expected: { subject: 'landing', length: 800, racks: 1 },
  },
  {
    name: 'no clean table',
    kind: 'clean-landing',
    change: (draft) => (draft.tables = [soiled(draft)]),
    expected: { subject: null, length: null, racks: null },
  },
  { name: 'drop-off drawn', kind: 'drop-off', change: () => {}, expected: { subject: 'drop-off', length: 660, racks: 1 } },
  {
    name: 'drop-off at the far end beyond the last sink',
    kind: 'drop-off',
    change: (draft) => (soiled(draft).fittings = [sink(1600)]),
    expected: { subject: 'soiled-table', length: 2900 - 1850, racks: 2 },
  },
  {
    name: 'less than a rack beyond the sink: none',
    kind: 'drop-off',
    change: (draft) => (soiled(draft).fittings = [sink(2400)]),
    expected: { subject: null },
  },
  {
    name: 'a cart for soiled ware near the end is the drop-off',
    kind: 'drop-off',
    change: (draft) => {
      soiled(draft).fittings = [sink(2400)];
      draft.things.push(cart(draft, 'soiled', 2900 + 600));
    },
    expected: { subject: 'cart', length: null, racks: null },
  },
  { name: 'pre-rinse', kind: 'pre-rinse', change: () => {}, expected: { subject: 'pre-rinse', length: 510 } },
  {
    name: 'a sink without spray is no pre-rinse',
    kind: 'pre-rinse',
    change: (draft) => (soiled(draft).fittings = [sink(1300, false)]),
    expected: { subject: null },
  },
  {
    name: 'a spray on the clean table is no pre-rinse of the line',
    kind: 'pre-rinse',
    change: (draft) => {
      soiled(draft).fittings = [];
      tableOf(draft, 'clean-table').fittings = [sink(800)];
    },
    expected: { subject: null },
  },
  { name: 'scrap', kind: 'scrap', change: () => {}, expected: { subject: 'scrap', length: 200 } },
  { name: 'storage', kind: 'storage', change: () => {}, expected: { subject: 'clean-shelving' } },
  {
    name: 'shelving for nothing is no storage',
    kind: 'storage',
    change: (draft) => (first(draft.things).ware = 'none'),
    expected: { subject: null, place: null },
  },
  { name: 'a bin is no storage', kind: 'storage', change: (draft) => (first(draft.things).kind = 'bin'), expected: { subject: null } },
  {
    name: 'more than 3 m away it belongs to something else',
    kind: 'storage',
    change: (draft) => (first(draft.things).y += 3600),
    expected: { subject: null },
  },
  { name: 'the machine', kind: 'machine', change: () => {}, expected: { subject: 'machine', racks: 1 } },
];

describe.each(ROWS)('$kind: $name', ({ change, kind, expected }) => {
  test('as drawn', () => {
    const { stations } = first(deriveScene(linePlan({}, change)).lines);
    expect(stations.map((station) => station.kind)).toEqual([
      'drop-off',
      'scrap',
      'pre-rinse',
      'soiled-landing',
      'machine',
      'clean-landing',
      'storage',
    ]);
    expect(stations.find((station) => station.kind === kind)).toMatchObject(expected);
  });
});

/** A cart on the soiled table's rack line, so far from the joint. */
function cart(draft: Plan, ware: Thing['ware'], along: number): Thing {
  const { x, y } = first(draft.machines);
  return {
    id: 'cart',
    kind: 'cart',
    name: '',
    x: x - 368.5 - along,
    y,
    rotationDeg: 0,
    width: 600,
    depth: 500,
    height: 900,
    ware,
    clearBelow: null,
    sealed: null,
    basins: null,
  };
}

test('soiled ware comes through the nearest pass window, from a cart beside the table, or from the drop-off', () => {
  const wayOf = (change: (draft: Plan) => unknown) => first(deriveScene(linePlan({}, change)).lines).ways.soiled;
  const plain = wayOf(() => {});
  expect(plain).toHaveLength(2);
  const window = { kind: 'pass-window', wall: 'wall-left', width: 800, height: 900, sill: 900, swing: 'none', hinge: 'start' } as const;
  const through = wayOf((draft) => {
    const length = (draft.room.outline[3]?.y ?? 0) - (draft.room.outline[0]?.y ?? 0);
    draft.room.openings = [
      { ...window, id: 'far', from: 100 },
      { ...window, id: 'near', from: length - 900 },
    ];
  });
  expect(through.slice(1)).toEqual(plain);
  expect(through[0]?.y).toBeCloseTo(500, 6);
  const beside = wayOf((draft) => {
    soiled(draft).fittings = [sink(2400)];
    draft.things.push(cart(draft, 'soiled', 2900 + 600));
  });
  expect(beside).toHaveLength(3);
  expect(plain[1]).toEqual(beside[2]);
});

test('a line without a clean table has a way in, and none through', () => {
  const { ways, hand, configuration } = first(deriveScene(linePlan({}, (draft) => (draft.tables = [soiled(draft)]))).lines);
  expect(configuration).toEqual({ kind: 'none', reason: 'one-table' });
  expect(hand).toBeNull();
  expect([ways.soiled.length, ways.rack.length, ways.clean.length]).toEqual([2, 0, 0]);
});
