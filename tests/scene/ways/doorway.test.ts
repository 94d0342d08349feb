import { expect, test } from 'vitest';
import type { Opening } from '../../../src/plan';
import { openBay, openWideBay } from '../../../src/scene/room/doorway';
import { MOTIONS } from '../../support/motions';
import { at, type Corner, HALL, type Move, roomOf, rounded } from '../hall';
import { first } from '../plans';

interface Row {
  name: string;
  corners?: readonly Corner[];
  opening: Partial<Opening>;
  /** Width of the wide bay; left out for the bay of the opening itself. */
  size?: number;
  /** Corners of the outline with the bay, and the middle of the bay. */
  outline: readonly Corner[];
  from: Corner;
}

/** A gap of a width outside the room, between two walls that face each other: from x = 3000, 2000 deep. */
const gap = (width: number): readonly Corner[] => [
  [0, 0],
  [3000, 0],
  [3000, 2000],
  [3000 + width, 2000],
  [3000 + width, 0],
  [6000, 0],
  [6000, 4000],
  [0, 4000],
];

/** An opening in the wall at x = 3000, its middle 1000 from either end. */
const IN_GAP = { wall: '1', from: 550, width: 900 };

const ROWS: Row[] = [
  {
    name: 'as wide and as deep as the opening',
    opening: { from: 1000, width: 900 },
    outline: [[0, 0], [1000, 0], [1000, -900], [1900, -900], [1900, 0], ...HALL.slice(1)],
    from: [1450, -450],
  },
  {
    name: 'in the lower wall, which is walked from right to left',
    opening: { wall: '2', from: 1000, width: 800 },
    outline: [...HALL.slice(0, 3), [5000, 4000], [5000, 4800], [4200, 4800], [4200, 4000], [0, 4000]],
    from: [4600, 4400],
  },
  {
    name: 'in the last wall, which ends at the first corner',
    opening: { wall: '3', from: 1000, width: 800 },
    outline: [...HALL, [0, 3000], [-800, 3000], [-800, 2200], [0, 2200]],
    from: [-400, 2600],
  },
  {
    name: 'at the start of its wall: the corner is not there twice',
    opening: { from: 0, width: 900 },
    outline: [[0, 0], [0, -900], [900, -900], [900, 0], ...HALL.slice(1)],
    from: [450, -450],
  },
  {
    name: 'at the end of its wall',
    opening: { from: 5100, width: 900 },
    outline: [[0, 0], [5100, 0], [5100, -900], [6000, -900], ...HALL.slice(1)],
    from: [5550, -450],
  },
  {
    name: 'all along its wall',
    opening: { wall: '1', from: 0, width: 4000 },
    outline: [
      [0, 0],
      [6000, 0],
      [10_000, 0],
      [10_000, 4000],
      [6000, 4000],
      [0, 4000],
    ],
    from: [8000, 2000],
  },
  {
    name: 'wide: 1200 about the middle of the opening at 1450',
    opening: { from: 1000, width: 900 },
    size: 1200,
    outline: [[0, 0], [850, 0], [850, -1200], [2050, -1200], [2050, 0], ...HALL.slice(1)],
    from: [1450, -600],
  },
  {
    name: 'wide, narrower than the opening: 600 about the same middle',
    opening: { from: 1000, width: 900 },
    size: 600,
    outline: [[0, 0], [1150, 0], [1150, -600], [1750, -600], [1750, 0], ...HALL.slice(1)],
    from: [1450, -300],
  },
  {
    name: 'wide, cut at the start of the wall: 0 to 550 + 600, and as deep as that',
    opening: { from: 100, width: 900 },
    size: 1200,
    outline: [[0, 0], [0, -1150], [1150, -1150], [1150, 0], ...HALL.slice(1)],
    from: [575, -575],
  },
  {
    name: 'wide, cut at the end of the wall: 5450 − 600 to 6000',
    opening: { from: 5000, width: 900 },
    size: 1200,
    outline: [[0, 0], [4850, 0], [4850, -1150], [6000, -1150], ...HALL.slice(1)],
    from: [5425, -575],
  },
  {
    name: 'wide, in a gap as wide as it is deep',
    corners: gap(1200),
    opening: IN_GAP,
    size: 1200,
    outline: [...gap(1200).slice(0, 2), [3000, 400], [4200, 400], [4200, 1600], [3000, 1600], ...gap(1200).slice(2)],
    from: [3600, 1000],
  },
  {
    name: 'wide, in a gap 0.9 narrower: a millimetre is left to it',
    corners: gap(1199.1),
    opening: IN_GAP,
    size: 1200,
    outline: [...gap(1199.1).slice(0, 2), [3000, 400], [4200, 400], [4200, 1600], [3000, 1600], ...gap(1199.1).slice(2)],
    from: [3600, 1000],
  },
  {
    name: 'wide, in a gap 1.1 narrower: the wall there would cut it, so it is half as wide and half as deep',
    corners: gap(1198.9),
    opening: IN_GAP,
    size: 1200,
    outline: [...gap(1198.9).slice(0, 2), [3000, 700], [3600, 700], [3600, 1300], [3000, 1300], ...gap(1198.9).slice(2)],
    from: [3300, 1000],
  },
];

const bayIn = ({ corners = HALL, opening, size }: Row, move: Move) => {
  const room = roomOf(corners, [opening], move);
  return size === undefined ? openBay(first(room.openings), room) : openWideBay(first(room.openings), room, size);
};

test.each(ROWS)('a bay: $name', (row) => {
  for (const { name, move } of MOTIONS) {
    const { outline, from } = bayIn(row, move);
    expect([name, ...cycleOf(rounded(outline))]).toEqual([name, ...cycleOf(rounded(row.outline.map(([x, y]) => move(at(x, y)))))]);
    expect([name, ...rounded([from])]).toEqual([name, ...rounded([move(at(...row.from))])]);
  }
});

/** Corners in their order around, whatever the first and the way round. */
function cycleOf(polygon: readonly { x: number; y: number }[]): string[] {
  const words = polygon.map(({ x, y }) => `${x} ${y}`);
  const start = words.indexOf(words.toSorted()[0] ?? '');
  const around = [...words.slice(start), ...words.slice(0, start)];
  const back = [around[0] ?? '', ...around.slice(1).reverse()];
  return (around[1] ?? '') < (back[1] ?? '') ? around : back;
}

test('an outline that is walked the other way round than its walls', () => {
  const room = roomOf(HALL.toReversed(), [{ wall: '2', from: 1000 }]);
  // The corners were (0, 4000), (6000, 4000), (6000, 0), (0, 0): wall 2 runs from the upper right corner to the left.
  expect(rounded(openBay(first(room.openings), room).outline)).toContainEqual(at(5000, -900));
  expect(rounded(openBay(first(room.openings), room).outline)).toHaveLength(8);
});
