import { expect, test } from 'vitest';
import type { Point, Segment } from '../../../src/geometry';
import type { Line, PlacedTable } from '../../../src/scene/types';
import { findSharedFloor } from '../../../src/scene/ways/findSharedFloor';
import { MOTIONS } from '../../support/motions';
import { AS_DRAWN, lineOf, type Move, pathOf, tableAt } from '../hall';

/** The ways and tables of a line, as far as a row tells them; a table by its rack line from the joint outward. Places are `x y`. */
interface Ways {
  soiled?: string;
  clean?: string;
  soiledTable?: string;
  cleanTable?: string;
}

interface Row {
  name: string;
  line: Ways;
  /** Lines beside it. */
  others?: readonly Ways[];
  width?: number;
  /** Just at a limit: when it is turned, rounding decides. */
  isExact?: boolean;
  /** Ends of each stretch, in any order. */
  shared: readonly string[];
}

/** Soiled ware is carried from the left to the right along y = 0. */
const ALONG = '0 0, 4000 0';

// Nearer than 600 to each other.
const ROWS: Row[] = [
  { name: 'no clean way', line: { soiled: ALONG }, shared: [] },
  { name: 'no soiled way', line: { clean: ALONG }, shared: [] },
  { name: 'a way of one place', line: { soiled: ALONG, clean: '2000 0' }, shared: [] },
  { name: 'side by side at 599.9', line: { soiled: ALONG, clean: '1000 599.9, 3000 599.9' }, shared: ['1000 599.9, 3000 599.9'] },
  {
    name: 'side by side at 599.9, on the other side',
    line: { soiled: ALONG, clean: '3000 -599.9, 1000 -599.9' },
    shared: ['1000 -599.9, 3000 -599.9'],
  },
  { name: 'side by side at 600', line: { soiled: ALONG, clean: '1000 600, 3000 600' }, shared: [] },
  { name: 'the same at a width of 601', width: 601, line: { soiled: ALONG, clean: '1000 600, 3000 600' }, shared: ['1000 600, 3000 600'] },
  { name: 'one across the other', line: { soiled: ALONG, clean: '2000 -2000, 2000 2000' }, shared: ['2000 -600, 2000 600'] },
  { name: 'across, and it ends on it', line: { soiled: ALONG, clean: '2000 -2000, 2000 0' }, shared: ['2000 -600, 2000 0'] },
  { name: 'aslant by 3 : 4', line: { soiled: ALONG, clean: '800 -900, 3200 900' }, shared: ['1200 -600, 2800 600'] },
  { name: 'in line behind its end', line: { soiled: ALONG, clean: '4300 0, 6000 0' }, shared: ['4300 0, 4600 0'] },
  { name: 'in line before its start', line: { soiled: ALONG, clean: '-300 0, -2000 0' }, shared: ['-300 0, -600 0'] },
  // 360 beyond the end: √(600² − 360²) = 480 to either side.
  { name: 'across behind its end', line: { soiled: ALONG, clean: '4360 -1000, 4360 1000' }, shared: ['4360 -480, 4360 480'] },
  { name: 'across before its start', line: { soiled: ALONG, clean: '-360 1000, -360 -1000' }, shared: ['-360 -480, -360 480'] },
  { name: 'across behind its end at 600', line: { soiled: ALONG, clean: '4600 -1000, 4600 1000' }, shared: [] },
  { name: 'a stretch of 1 only touches', isExact: true, line: { soiled: ALONG, clean: '4599 0, 6000 0' }, shared: [] },
  { name: 'one of 1.1 is shared', line: { soiled: ALONG, clean: '4598.9 0, 6000 0' }, shared: ['4598.9 0, 4600 0'] },
  { name: 'a leg without length is none', line: { soiled: '0 0, 0 0, 4000 0', clean: '2000 0, 2000 0' }, shared: [] },
  {
    name: 'two legs of the soiled way are near one leg of the clean: one stretch',
    line: { soiled: '0 0, 2000 0, 2000 2000', clean: '500 300, 2300 300' },
    shared: ['500 300, 2300 300'],
  },
  {
    name: 'twice near, far apart: two stretches',
    line: { soiled: '0 0, 0 3000, 4000 3000, 4000 0', clean: '-1000 1000, 5000 1000' },
    shared: ['-600 1000, 600 1000', '3400 1000, 4600 1000'],
  },
  {
    name: 'each leg of the clean way for itself',
    line: { soiled: ALONG, clean: '1000 100, 2000 100, 2000 -3000' },
    shared: ['1000 100, 2000 100', '2000 100, 2000 -600'],
  },
  {
    name: 'clean ware of another line',
    line: { soiled: ALONG },
    others: [{ clean: '2000 -2000, 2000 2000' }],
    shared: ['2000 -600, 2000 600'],
  },
  { name: 'soiled ware of another line is none', line: { soiled: ALONG }, others: [{ soiled: '2000 -2000, 2000 2000' }], shared: [] },
  { name: 'what only the other line shares with itself is its own', line: {}, others: [{ soiled: ALONG, clean: ALONG }], shared: [] },
  // The clean table from (4000, 0), its joint, to (6000, 0): up to 4600 the wares merely meet.
  {
    name: 'on its own table clean ware shares nothing with soiled ware on its own',
    line: { soiled: ALONG, soiledTable: '4000 0, 0 0', clean: '4000 100, 0 100', cleanTable: '4000 100, 0 100' },
    shared: [],
  },
  {
    name: 'clean ware carried across the soiled table',
    line: { soiled: ALONG, soiledTable: '4000 0, 0 0', clean: '2000 -2000, 2000 2000' },
    shared: ['2000 -600, 2000 600'],
  },
  {
    name: 'clean ware carried across the soiled table’s last 600 before its joint: from 3400 on there is no table',
    line: {
      soiled: ALONG,
      soiledTable: '4000 0, 0 0',
      clean: '3760 -2000, 3760 2000',
    },
    // 360 beyond the end at 3400.
    shared: ['3760 -480, 3760 480'],
  },
  { name: 'right at the joint', line: { soiled: ALONG, soiledTable: '4000 0, 0 0', clean: '4000 -2000, 4000 2000' }, shared: [] },
  {
    name: 'a table as long as the width is all joint',
    line: { soiled: '0 0, 600 0', soiledTable: '600 0, 0 0', clean: '0 -2000, 0 2000' },
    shared: [],
  },
  {
    name: 'one 100 longer has 100 left: 480 beside it',
    line: { soiled: '0 0, 700 0', soiledTable: '700 0, 0 0', clean: '-360 -2000, -360 2000' },
    shared: ['-360 -480, -360 480'],
  },
  {
    name: 'soiled ware carried across the clean table',
    line: { soiled: '5000 -2000, 5000 2000', clean: '4000 0, 6000 0', cleanTable: '4000 0, 6000 0' },
    shared: ['5000 -600, 5000 600'],
  },
  {
    name: 'soiled ware carried past the clean table’s joint',
    line: { soiled: '4000 -2000, 4000 2000', clean: '4000 0, 6000 0', cleanTable: '4000 0, 6000 0' },
    shared: [],
  },
  {
    name: 'behind the end of its table clean ware is on the floor: it is near the soiled way there',
    line: { soiled: '5500 1000, 7000 1000', clean: '4000 0, 6000 0, 6000 3000', cleanTable: '4000 0, 6000 0' },
    shared: ['6000 400, 6000 1600'],
  },
  {
    name: 'across the corner of an L table it is on the floor, though both its ends are on the table',
    line: {
      soiled: '3000 1400, 3000 3000',
      clean: '1000 0, 3000 0, 3000 2000, 1500 0',
      cleanTable: '1000 0, 3000 0, 3000 2000',
    },
    width: 100,
    // 3 : 4 from (1500, 0) to (3000, 2000): the soiled way at x = 3000 is nearer than 100 from x = 2900 on, where y = 1866.67; its own
    // ware is near the clean table beside it, from 1400 to the end of the table at 2000 and 100 beyond.
    shared: ['2900 1866.667, 3000 2000', '3000 1400, 3000 2100'],
  },
  {
    name: 'a leg half a millimetre beside its table is on it',
    line: { soiled: '2000 -2000, 2000 -100', soiledTable: '', clean: '0 0.5, 4000 0.5', cleanTable: '0 0, 4000 0' },
    width: 50,
    shared: [],
  },
  {
    name: 'a leg 1 beside its table is not',
    isExact: true,
    line: {
      soiled: '2000 -2000, 2000 3',
      clean: '0 1, 4000 1',
      cleanTable: '-900 0, 4000 0',
    },
    width: 50,
    // Of the clean leg 50 to either side; of the soiled way the last 50 before the clean table and what is beyond it.
    shared: ['1950 1, 2050 1', '2000 -50, 2000 3'],
  },
];

test.each(ROWS)('shared floor: $name', ({ line, others = [], width = 600, isExact, shared }) => {
  for (const { name, move } of isExact ? MOTIONS.slice(0, 1) : MOTIONS) {
    const own = lineFrom(line, move);
    const found = findSharedFloor(own, [own, ...others.map((other) => lineFrom(other, move))], width);
    expect([name, ...wordsOf(found)]).toEqual([name, ...wordsOf(stretchesOf(shared, move))]);
  }
});

test('ways drawn the other way round share the same', () => {
  for (const { name, line, others = [], width = 600, isExact, shared } of ROWS) {
    if (isExact || line.soiledTable !== undefined || line.cleanTable !== undefined || others.length > 0) continue;
    const { soiled, clean } = lineFrom(line, AS_DRAWN).ways;
    const own = lineOf({ ways: { soiled: soiled.toReversed(), rack: [], clean: clean.toReversed() } });
    expect([name, ...wordsOf(findSharedFloor(own, [own], width))]).toEqual([name, ...wordsOf(stretchesOf(shared, AS_DRAWN))]);
  }
});

function lineFrom({ soiled = '', clean = '', soiledTable, cleanTable }: Ways, move: Move): Line {
  const wayOf = (text: string) => pathOf(text).map(move);
  const tableOf = (text: string | undefined): PlacedTable | null =>
    text === undefined ? null : { ...tableAt(0, 0, 0), path: wayOf(text) };
  return lineOf({
    soiled: tableOf(soiledTable),
    clean: tableOf(cleanTable),
    ways: { soiled: wayOf(soiled), rack: [], clean: wayOf(clean) },
  });
}

const stretchesOf = (shared: readonly string[], move: Move): Segment[] =>
  shared.map((text) => {
    const [a, b] = pathOf(text).map(move) as [Point, Point];
    return { a, b };
  });

/** The ends of each to the hundredth, the left one first, in the order of the words. */
const wordsOf = (stretches: readonly Segment[]): string[] =>
  stretches.map(({ a, b }) => [a, b].map(wordOf).toSorted().join(' … ')).toSorted();

const wordOf = ({ x, y }: Point) => `${(Math.round(x * 100) / 100 + 0).toFixed(2)} ${(Math.round(y * 100) / 100 + 0).toFixed(2)}`;
