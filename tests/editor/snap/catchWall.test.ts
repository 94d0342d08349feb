import { describe, expect, it } from 'vitest';
import { gapBetween, type Span } from '../../../src/editor/snap/catch';
import { catchWall, type WallLine } from '../../../src/editor/snap/catchWall';

const span = (min: number, max: number, keepOff = { min: 0, max: 0 }, side = { min: 0, max: 100 }): Span => ({
  min,
  max,
  mid: (min + max) / 2,
  side: { ...side, mid: (side.min + side.max) / 2 },
  keepOff,
});

/** At 1000; the room lies beyond it, or before it. */
const lower: WallLine = { at: 1000, inward: 1, side: { min: -500, max: 500 } };
const upper: WallLine = { at: 1000, inward: -1, side: { min: -500, max: 500 } };

describe('one box', () => {
  const keepOff = { min: 120, max: 70 };
  it.each([
    { name: 'flush to a lower wall', wall: lower, box: span(1010, 1200), catches: { by: -10, cost: 10, kind: 'flush', at: 1000 } },
    { name: 'flush to an upper wall', wall: upper, box: span(800, 990), catches: { by: 10, cost: 10, kind: 'flush', at: 1000 } },
    { name: 'back from behind a lower wall', wall: lower, box: span(985, 1200), catches: { by: 15, cost: 15, kind: 'flush', at: 1000 } },
    { name: 'back from behind an upper wall', wall: upper, box: span(800, 1015), catches: { by: -15, cost: 15, kind: 'flush', at: 1000 } },
    {
      name: 'at its lower service space, from without',
      wall: lower,
      box: span(1140, 1300, keepOff),
      catches: { by: -20, cost: 20, kind: 'clearance', at: 1120 },
    },
    {
      name: 'at its lower service space, from within',
      wall: lower,
      box: span(1050, 1300, keepOff),
      catches: { by: 70, cost: 0, kind: 'clearance', at: 1120 },
    },
    {
      name: 'in its service space already',
      wall: lower,
      box: span(1120, 1300, keepOff),
      catches: { by: 0, cost: 0, kind: 'clearance', at: 1120 },
    },
    {
      name: 'at its upper service space, from without',
      wall: upper,
      box: span(700, 910, keepOff),
      catches: { by: 20, cost: 20, kind: 'clearance', at: 930 },
    },
    {
      name: 'at its upper service space, from within',
      wall: upper,
      box: span(700, 990, keepOff),
      catches: { by: -60, cost: 0, kind: 'clearance', at: 930 },
    },
  ])('$name', ({ wall, box, catches }) => {
    expect(catchWall([box], wall, 30)).toEqual([{ ...catches, from: 0, to: 100 }]);
  });

  it.each([
    { name: 'at the reach', box: span(1030, 1200), isCaught: true },
    { name: 'beyond it', box: span(1030.5, 1200), isCaught: false },
    { name: 'as far behind the wall', box: span(970, 1200), isCaught: true },
    { name: 'farther behind it', box: span(969.5, 1200), isCaught: false },
    { name: 'at the reach from its service space', box: span(1150, 1300, keepOff), isCaught: true },
    { name: 'beyond the reach from its service space', box: span(1150.5, 1300, keepOff), isCaught: false },
    { name: 'its side before the wall by 1 mm', box: span(1010, 1200, undefined, { min: 499, max: 600 }), isCaught: true },
    { name: 'its side before the wall by less', box: span(1010, 1200, undefined, { min: 499.5, max: 600 }), isCaught: false },
    { name: 'its side beyond the other end', box: span(1010, 1200, undefined, { min: -600, max: -499.5 }), isCaught: false },
  ])('$name: $isCaught', ({ box, isCaught }) => {
    expect(catchWall([box], lower, 30)).toHaveLength(isCaught ? 1 : 0);
  });
});

describe('several boxes', () => {
  it.each([
    { name: 'the one behind the wall decides', gaps: [10, -300], by: 300 },
    { name: 'whatever their order', gaps: [-300, 10], by: 300 },
    { name: 'as far as 400 mm behind it', gaps: [10, -400], by: 400 },
    { name: 'one still farther behind is past bringing back', gaps: [10, -400.5], by: -10 },
    { name: 'the nearest of those before it', gaps: [25, 12, 200], by: -12 },
  ])('$name', ({ gaps, by }) => {
    const boxes = gaps.map((gap) => span(1000 + gap, 1500));
    expect(catchWall(boxes, lower, 30).map((each) => each.by)).toEqual([by]);
  });

  it('one that needs service space decides before one that is nearer', () => {
    const boxes = [span(1010, 1200), span(1050, 1300, { min: 120, max: 0 }, { min: 20, max: 80 })];
    expect(catchWall(boxes, lower, 30)).toEqual([{ by: 70, cost: 0, kind: 'clearance', at: 1120, from: 20, to: 80 }]);
  });

  it('none before the wall, no catch', () => {
    expect(catchWall([], lower, 30)).toEqual([]);
  });
});

describe('gap between spans', () => {
  it.each([
    [{ min: 0, max: 10 }, { min: 15, max: 20 }, 5],
    [{ min: 15, max: 20 }, { min: 0, max: 10 }, 5],
    [{ min: 0, max: 10 }, { min: 4, max: 20 }, -6],
    [{ min: 0, max: 10 }, { min: 10, max: 20 }, 0],
  ])('%o and %o: %d', (a, b, gap) => {
    expect(gapBetween(a, b)).toBe(gap);
  });
});
