import { describe, expect, it } from 'vitest';
import { findCatch, isHeld, type TableEnd } from '../../../src/editor/snap/joint';
import { deriveScene } from '../../../src/scene';
import { straightPlan } from '../plans';

/** The machine at (4000, 800): doors at (3631.5, 800), (4368.5, 800) and (4000, 1155.5). */
const taken = deriveScene(straightPlan());
const free = deriveScene({ ...straightPlan(), tables: [] });

const end = (x: number, y: number, headingDeg: number, reversed = false): TableEnd => ({ point: { x, y }, headingDeg, reversed });
const held = (side: string, reversed = false) => ({ machine: 'machine', side, reversed });

describe('a door catches the end of a table', () => {
  it.each([
    { name: 'right, at 150 mm', ends: [end(4518.5, 800, 0)], gives: held('right') },
    { name: 'beyond', ends: [end(4519, 800, 0)], gives: null },
    { name: 'aside, at 150 mm', ends: [end(4368.5, 950, 0)], gives: held('right') },
    { name: 'within the machine', ends: [end(4218.5, 800, 0)], gives: held('right') },
    { name: 'left', ends: [end(3600, 800, 180)], gives: held('left') },
    { name: 'front', ends: [end(4000, 1200, 90)], gives: held('front') },
    { name: 'heading out within 30°', ends: [end(4400, 800, 30)], gives: held('right') },
    { name: 'within 30° the other way', ends: [end(4400, 800, -30)], gives: held('right') },
    { name: 'heading past 30°', ends: [end(4400, 800, 30.5)], gives: null },
    { name: 'heading past 30° the other way', ends: [end(4400, 800, 329.5)], gives: null },
    { name: 'heading in', ends: [end(4400, 800, 180)], gives: null },
    { name: 'the nearer end', ends: [end(4468.5, 800, 0), end(3600, 800, 180, true)], gives: held('left', true) },
    { name: 'the nearer end, the first', ends: [end(4388.5, 800, 0), end(3600, 800, 180, true)], gives: held('right') },
    { name: 'no end', ends: [], gives: null },
  ])('$name', ({ ends, gives }) => {
    expect(findCatch(free, 'clean-table', ends)).toEqual(gives);
  });

  it('not where another table stands, but its own', () => {
    const ends = [end(4400, 800, 0)];
    expect(findCatch(taken, null, ends)).toBeNull();
    expect(findCatch(taken, 'soiled-table', ends)).toBeNull();
    expect(findCatch(taken, 'clean-table', ends)).toEqual(held('right'));
  });

  it('not where there is no door', () => {
    expect(findCatch(free, null, [end(4000, 444.5, 270)])).toBeNull();
  });
});

describe('a door holds an end', () => {
  const hold = { machine: 'machine', side: 'right', reversed: false } as const;
  it.each([
    { x: 4618.5, is: true },
    { x: 4619, is: false },
    { x: 4118.5, is: true },
    { x: 4118, is: false },
  ])('at $x: $is', ({ x, is }) => {
    expect(isHeld(taken, 'clean-table', hold, { x, y: 800 })).toBe(is);
  });

  it('not one that another table has, nor of another machine, nor another door', () => {
    const at = { x: 4368.5, y: 800 };
    expect(isHeld(taken, 'soiled-table', hold, at)).toBe(false);
    expect(isHeld(taken, 'clean-table', { ...hold, machine: 'nobody' }, at)).toBe(false);
    expect(isHeld(free, 'clean-table', { ...hold, side: 'left' }, at)).toBe(false);
    expect(isHeld(free, 'clean-table', { ...hold, side: 'back' }, at)).toBe(false);
  });
});
