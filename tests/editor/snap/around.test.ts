import { describe, expect, it } from 'vitest';
import { distancesAround } from '../../../src/editor/snap/around';
import type { Box } from '../../../src/editor/snap/box';
import { nearly } from '../../support/nearly';
import { boxAt, roomWalls as walls } from '../shapes';

const at = (x: number, y: number) => ({ x, y });
const row = (from: { x: number; y: number }, to: { x: number; y: number }, value: number) => ({ kind: 'distance', from, to, value });
/** 800 × 500 at (2000, 1500): from 1600 to 2400 and from 1250 to 1750. */
const main = boxAt(2000, 1500, 800, 500);
const values = (box: Box, boxes: readonly Box[] = [], together: readonly Box[] = []) =>
  distancesAround(box, { walls, boxes }, together).map(({ value }) => value);

describe('distances around a box', () => {
  it('to the walls: along its x, back, down and up', () => {
    expect(distancesAround(main, { walls, boxes: [] })).toEqual(
      nearly([
        row(at(2400, 1500), at(8000, 1500), 5600),
        row(at(1600, 1500), at(0, 1500), 1600),
        row(at(2000, 1750), at(2000, 5000), 3250),
        row(at(2000, 1250), at(2000, 0), 1250),
      ]),
    );
  });

  it('at its own rotation', () => {
    // Turned a quarter, its x looks down the paper and is 800 long.
    expect(distancesAround(boxAt(2000, 1500, 800, 500, 90), { walls, boxes: [] })).toEqual(
      nearly([
        row(at(2000, 1900), at(2000, 5000), 3100),
        row(at(2000, 1100), at(2000, 0), 1100),
        row(at(1750, 1500), at(0, 1500), 1750),
        row(at(2250, 1500), at(8000, 1500), 5750),
      ]),
    );
  });

  it.each([
    { name: 'as far as 6 m', box: boxAt(1600, 1500, 800, 500), gives: [6000, 1200, 3250, 1250] },
    { name: 'no farther', box: boxAt(1599, 1500, 800, 500), gives: [1199, 3250, 1250] },
    { name: 'not where it touches', box: boxAt(400.5, 1500, 800, 500), gives: [3250, 1250] },
    { name: 'but just off the wall', box: boxAt(400.6, 1500, 800, 500), gives: [0.6, 3250, 1250] },
  ])('$name', ({ box, gives }) => {
    expect(values(box)).toEqual(nearly(gives));
  });

  it.each([
    { name: 'a thing on the way', other: boxAt(3000, 1500), gives: [500, 1600, 3250, 1250] },
    { name: 'a thing beside the way', other: boxAt(3000, 1600, 200, 199), gives: [5600, 1600, 3250, 1250] },
    { name: 'its edge on the way', other: boxAt(3000, 1600, 200, 200), gives: [500, 1600, 3250, 1250] },
    { name: 'a mark without size', other: boxAt(3000, 1500, 0, 0), gives: [5600, 1600, 3250, 1250] },
    { name: 'an edge without depth', other: boxAt(2000, 800, 200, 0), gives: [5600, 1600, 3250, 1250] },
    { name: 'an edge without width', other: boxAt(3000, 1500, 0, 200), gives: [5600, 1600, 3250, 1250] },
    { name: 'the nearest of all', other: boxAt(2000, 4000), gives: [5600, 1600, 2200, 1250] },
  ])('$name', ({ other, gives }) => {
    expect(values(main, [other])).toEqual(nearly(gives));
  });

  it.each([
    { name: 'what moves along and lies across', other: boxAt(2600, 1500, 400), gives: [5200, 1600, 3250, 1250] },
    { name: 'on the other side', other: boxAt(1400, 1500, 400), gives: [5600, 1200, 3250, 1250] },
    { name: 'its edge on the way', other: boxAt(2600, 1550, 400, 100), gives: [5200, 1600, 3250, 1250] },
    { name: 'its other edge on the way', other: boxAt(2600, 1450, 400, 100), gives: [5200, 1600, 3250, 1250] },
    { name: 'beside the way', other: boxAt(2600, 1551, 400, 100), gives: [5600, 1600, 3250, 1250] },
    { name: 'beside the way, above', other: boxAt(2600, 1449, 400, 100), gives: [5600, 1600, 3250, 1250] },
    { name: 'within the box', other: boxAt(2100, 1500, 200), gives: [5600, 1600, 3250, 1250] },
  ])('from the far side of $name', ({ other, gives }) => {
    expect(values(main, [], [other])).toEqual(nearly(gives));
  });
});
