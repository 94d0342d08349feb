import { expect, test } from 'vitest';
import type { Opening, Thing } from '../../../src/plan';
import type { Line } from '../../../src/scene/types';
import { findStationWays, type StationWay } from '../../../src/scene/ways/findStationWays';
import { at, type Corner, HALL, lineOf, roomOf, rounded, solidOf, stationOf, tableAt, thingOf } from '../hall';

type Standing = readonly [id: string, x: number, y: number, width: number, depth: number, change: Partial<Thing>];

/** In the middle of the left wall. */
const DOOR: Partial<Opening> = { id: 'door', wall: '3', from: 1550, width: 900 };
const SINK = { kind: 'hand-sink' } as const;

/** Soiled table from (2000, 2000), clean table from (2000, 600), each 2000 to the right; worked at from y = 2273 and 873. */
const STATIONS: Line['stations'] = [
  stationOf('drop-off', 'drop-off', at(3800, 2000), 400),
  stationOf('scrap', 'scrap', at(3300, 2000), 200),
  stationOf('pre-rinse', 'pre-rinse', at(2900, 2000), 500),
  stationOf('soiled-landing', 'soiled-landing', at(2400, 2000), 500),
  stationOf('machine', 'machine', at(1500, 2000)),
  stationOf('clean-landing', 'clean-landing', at(2500, 600), 500),
  stationOf('storage', 'shelf', at(5500, 200)),
];

const without = (...kinds: readonly string[]) =>
  STATIONS.map((station) => (kinds.includes(station.kind) ? { ...station, subject: null, place: null } : station));

const LINE: Partial<Line> = { soiled: tableAt(2000, 2000, 0), clean: tableAt(2000, 600, 0), stations: STATIONS };
const SHELF: Standing = ['shelf', 5500, 200, 800, 400, { kind: 'shelving' }];

interface PlacesRow {
  name: string;
  lines: readonly Partial<Line>[];
  things?: readonly Standing[];
  /** Kind, subject and stand of each place. */
  places: readonly (readonly [StationWay['kind'], string, Corner])[];
}

const DROP_OFF = ['drop-off', 'drop-off', [3800, 2773]] as const;
const PRE_RINSE = ['pre-rinse', 'pre-rinse', [2900, 2773]] as const;
const CLEAN = ['clean-landing', 'clean-landing', [2500, 1373]] as const;
const STORAGE = ['storage', 'shelf', [5500, 900]] as const;

const PLACES_ROWS: PlacesRow[] = [
  { name: 'the four that people walk to', lines: [LINE], places: [DROP_OFF, PRE_RINSE, CLEAN, STORAGE] },
  {
    name: 'hand sinks after them',
    lines: [LINE],
    things: [['sink', 4500, 200, 400, 400, SINK], SHELF],
    places: [DROP_OFF, PRE_RINSE, CLEAN, STORAGE, ['hand-sink', 'sink', [4500, 900]]],
  },
  {
    name: 'without a pre-rinse the scrap opening',
    lines: [{ ...LINE, stations: without('pre-rinse') }],
    places: [DROP_OFF, ['pre-rinse', 'scrap', [3300, 2773]], CLEAN, STORAGE],
  },
  { name: 'without either none', lines: [{ ...LINE, stations: without('pre-rinse', 'scrap') }], places: [DROP_OFF, CLEAN, STORAGE] },
  {
    name: 'only the pre-rinse is stood in for: no drop-off, no storage',
    lines: [{ ...LINE, stations: without('drop-off', 'storage') }],
    places: [PRE_RINSE, CLEAN],
  },
  { name: 'without a clean table', lines: [{ ...LINE, clean: null }], places: [DROP_OFF, PRE_RINSE, STORAGE] },
  { name: 'without a soiled table', lines: [{ ...LINE, soiled: null }], places: [CLEAN, STORAGE] },
  {
    name: 'a station of a table without a place',
    lines: [{ ...LINE, stations: STATIONS.map((station) => (station.kind === 'clean-landing' ? { ...station, place: null } : station)) }],
    places: [DROP_OFF, PRE_RINSE, STORAGE],
  },
  { name: 'without stations', lines: [{ ...LINE, stations: [] }], places: [] },
  { name: 'what two lines share once', lines: [LINE, LINE], places: [DROP_OFF, PRE_RINSE, CLEAN, STORAGE] },
  {
    name: 'the shelf of one line is the drop-off of the next: twice',
    lines: [
      { ...LINE, stations: without('drop-off', 'pre-rinse', 'scrap', 'clean-landing') },
      { ...LINE, stations: [stationOf('drop-off', 'shelf', at(5500, 200))] },
    ],
    places: [STORAGE, ['drop-off', 'shelf', [5500, 900]]],
  },
];

test.each(PLACES_ROWS)('places of work: $name', ({ lines, things = [SHELF], places }) => {
  const placed = things.map(([id, x, y, width, depth, change]) => thingOf(x, y, width, depth, { ...change, id }));
  const scene = { room: roomOf(HALL, [DOOR]), solids: [], lines: lines.map(lineOf), things: placed };
  const found = findStationWays(scene, { enough: 1000, pass: 700 }) ?? [];
  expect(found.map(({ kind, subject, stand }) => [kind, subject, ...rounded([stand])])).toEqual(
    places.map(([kind, subject, stand]) => [kind, subject, at(...stand)]),
  );
});

test('to a cart itself there is no way beside carts; to what is behind it there is', () => {
  const cart = thingOf(5500, 200, 800, 400, { id: 'shelf', kind: 'cart' });
  const scene = { room: roomOf(HALL, [DOOR]), solids: [solidOf('shelf', cart.polygon)], lines: [lineOf(LINE)], things: [cart] };
  const found = findStationWays(scene, { enough: 1000, pass: 700 }) ?? [];
  expect(found.map(({ subject, besideCarts }) => [subject, besideCarts?.width ?? null])).toEqual([
    ['drop-off', 1000],
    ['pre-rinse', 1000],
    ['clean-landing', 1000],
    ['shelf', null],
  ]);
});
