import { expect, test } from 'vitest';
import type { SolidKind } from '../../../src/scene/types';
import { floorObstacles, standOnFloor } from '../../../src/scene/ways/floorObstacles';
import { box, solidOf } from '../hall';

const PIECES = [box(0, 0, 100, 100), box(100, 0, 200, 300)];

interface Row {
  kind: SolidKind;
  zFrom: number;
  /** Height at which it hangs, null where it stands; left out where it is in nobody's way. */
  hangsAt?: number | null;
}

/** In the way below 2032, the height of heads; hanging from 500 on, but for a table and its backsplash, which have legs. */
const ROWS: Row[] = [
  { kind: 'thing', zFrom: 0, hangsAt: null },
  { kind: 'thing', zFrom: 499, hangsAt: null },
  { kind: 'thing', zFrom: 500, hangsAt: 500 },
  { kind: 'thing', zFrom: 2031.9, hangsAt: 2031.9 },
  { kind: 'thing', zFrom: 2032 },
  { kind: 'run', zFrom: 1900, hangsAt: 1900 },
  { kind: 'overshelf', zFrom: 1400, hangsAt: 1400 },
  { kind: 'recovery-box', zFrom: 1200, hangsAt: 1200 },
  { kind: 'column', zFrom: 0, hangsAt: null },
  { kind: 'machine', zFrom: 0, hangsAt: null },
  { kind: 'table', zFrom: 814, hangsAt: null },
  { kind: 'backsplash', zFrom: 864, hangsAt: null },
  { kind: 'table', zFrom: 2032 },
  { kind: 'hood', zFrom: 1950 },
  { kind: 'hood', zFrom: 0 },
  { kind: 'door-lift', zFrom: 1600 },
];

test.each(ROWS)('on the floor: $kind from $zFrom', ({ kind, zFrom, hangsAt }) => {
  const found = standOnFloor({ owner: 'it', kind, pieces: PIECES, zFrom });
  expect(found.map((item) => [item.owner, item.kind, item.polygon, item.body.polygon, item.hangsAt])).toEqual(
    hangsAt === undefined ? [] : PIECES.map((piece) => ['it', kind, piece, piece, hangsAt]),
  );
});

test('of all bodies, in their order', () => {
  const solids = [solidOf('one', box(0, 0, 1, 1)), solidOf('high', box(0, 0, 1, 1), undefined, 2100), solidOf('two', box(2, 0, 3, 1))];
  expect(floorObstacles({ solids }).map(({ owner }) => owner)).toEqual(['one', 'two']);
});
