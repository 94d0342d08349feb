import { describe, expect, it } from 'vitest';
import { snapRotation } from '../../../src/editor/snap/rotation';
import { nudgeFor, roundTo, stepFor, withoutDust } from '../../../src/editor/snap/step';
import { wallFrom } from '../shapes';

describe('the step of lengths', () => {
  // The finest that shows as 3 px at least: 3 ÷ 12.7, 3 ÷ 25.4 … px per mm.
  it.each([
    ['us', 0.2363, 12.7],
    ['us', 0.2362, 25.4],
    ['us', 0.1182, 25.4],
    ['us', 0.1181, 76.2],
    ['us', 0.0394, 76.2],
    ['us', 0.0393, 152.4],
    ['us', 0.0197, 152.4],
    ['us', 0.0196, 304.8],
    ['us', 0.005, 304.8],
    ['metric', 0.3, 10],
    ['metric', 0.299, 50],
    ['metric', 0.06, 50],
    ['metric', 0.059, 100],
    ['metric', 0.03, 100],
    ['metric', 0.029, 500],
    ['metric', 0.005, 500],
  ] as const)('%s at %d px/mm: %d mm', (units, scale, step) => {
    expect(stepFor(units, scale)).toBe(step);
  });

  it.each([
    [1007, 50, 1000],
    [1025, 50, 1050],
    [1024.9, 50, 1000],
    [-26, 50, -50],
    [-24, 50, 0],
    [1007.3, 0, 1007.3],
    [0.2, 0.1, 0.2],
    [76, 25.4, 76.2],
  ])('%d in steps of %d: %d', (value, step, gives) => {
    expect(Object.is(roundTo(value, step), gives)).toBe(true);
  });

  it('takes dust off, and the sign of zero', () => {
    expect(withoutDust(0.1 + 0.2)).toBe(0.3);
    expect(Object.is(withoutDust(-0), 0)).toBe(true);
    expect(withoutDust(1234.56789012)).toBe(1234.56789012);
  });

  it.each([
    ['us', 2, 3.175],
    ['us', 1.99, 12.7],
    ['us', 0.5, 12.7],
    ['us', 0.49, 25.4],
    ['metric', 2, 1],
    ['metric', 1.99, 5],
    ['metric', 0.5, 5],
    ['metric', 0.49, 10],
  ] as const)('an arrow key, %s at %d px/mm: %d mm', (units, scale, gives) => {
    expect(nudgeFor(units, scale)).toBe(gives);
  });
});

describe('the step of rotations', () => {
  const at = (deg: number) => [wallFrom(0, 0, 1000 * Math.cos((deg * Math.PI) / 180), 1000 * Math.sin((deg * Math.PI) / 180))];
  it.each([
    { name: 'down to a step', deg: 22.4, wall: 0, gives: 15 },
    { name: 'up to a step', deg: 22.6, wall: 0, gives: 30 },
    { name: 'up to a full turn, which is none', deg: 352.6, wall: 0, gives: 0 },
    { name: 'from below none', deg: -16, wall: 0, gives: 345 },
    { name: 'square to a wall within 4°', deg: 23.9, wall: 20, gives: 20 },
    { name: 'not beyond', deg: 24.1, wall: 20, gives: 30 },
    { name: 'from below, within 4°', deg: 106.1, wall: 20, gives: 105 },
    { name: 'across the wall', deg: 113.9, wall: 20, gives: 110 },
    { name: 'against the wall', deg: 203.9, wall: 20, gives: 200 },
    { name: 'across it, the other way', deg: 293.9, wall: 20, gives: 290 },
    { name: 'the step where it is nearer', deg: 16.1, wall: 20, gives: 15 },
    { name: 'the step where both are as near', deg: 18.5, wall: 22, gives: 15 },
    { name: 'the wall where it is nearer', deg: 18.6, wall: 22, gives: 22 },
    { name: 'the wall, from beyond the full turn', deg: 359, wall: 2, gives: 0 },
    { name: 'the wall, over the full turn', deg: 368.5, wall: 8, gives: 8 },
  ])('$name', ({ deg, wall, gives }) => {
    expect(snapRotation(deg, at(wall), false)).toBeCloseTo(gives, 9);
  });

  it.each([
    [17.26, 17.3],
    [17.24, 17.2],
    [-10, 350],
    [23.9, 23.9],
  ])('free, a tenth of a degree: %d gives %d', (deg, gives) => {
    expect(snapRotation(deg, at(20), true)).toBeCloseTo(gives, 9);
  });
});
