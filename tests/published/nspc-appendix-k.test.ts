import { describe, expect, test } from 'vitest';
import { drainFlow, drainSpeed, leastSlope, SCOURING_SPEED } from '../../src/topics/drain';
import { fromSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

/** Beside the same drain half full. */
const beside = (of: typeof drainFlow, depth: number) => {
  const drain = { boreM: 3 * INCH, slope: 1 / 96, roughness: 0.012 };
  return valueOf(of({ ...drain, depth })) / valueOf(of({ ...drain, depth: 0.5 }));
};

// source: National Standard Plumbing Code 2009, Appendix K, beside half full · read · 0.5 %
describe('partial filling', () => {
  test.each([
    [1, 2, 1],
    [0.75, 1.82, 1.13],
    [0.25, 0.274, 0.701],
  ])('depth %d: flow times %d, speed times %d', (depth, flow, speed) => {
    expect(Math.abs(beside(drainFlow, depth) / flow - 1)).toBeLessThan(0.005);
    expect(Math.abs(beside(drainSpeed, depth) / speed - 1)).toBeLessThan(0.005);
  });

  // regression: the same by Manning's equation · computed · four figures
  test.each([
    [1, 2, 1],
    [0.75, 1.824, 1.133],
    [0.25, 0.274, 0.7007],
  ])('depth %d by Manning: %d, %d', (depth, flow, speed) => {
    expect(Math.abs(beside(drainFlow, depth) / flow - 1)).toBeLessThan(0.0005);
    expect(Math.abs(beside(drainSpeed, depth) / speed - 1)).toBeLessThan(0.0005);
  });
});

// source: the same: for another n multiply by 0.015 / n · read · exact
test.each([0.009, 0.012, 0.013])('n %d carries 0.015 / n as much', (roughness) => {
  const drain = { boreM: 3 * INCH, slope: 1 / 96, depth: 0.5 };
  const ratio = valueOf(drainFlow({ ...drain, roughness })) / valueOf(drainFlow({ ...drain, roughness: 0.015 }));
  expect(ratio).toBeCloseTo(0.015 / roughness, 9);
});

// source: the same: scouring speed 2 ft/s; 2 in and smaller ¼ in/ft, 3 in and larger ⅛ in/ft · read · exact
test('scouring speed and least fall', () => {
  expect(fromSI(SCOURING_SPEED, 'ft/s')).toBeCloseTo(2, 12);
  expect(valueOf(leastSlope({ sizeM: 2 * INCH }))).toBe(1 / 48);
  expect(valueOf(leastSlope({ sizeM: 3 * INCH }))).toBe(1 / 96);
});

// regression: Manning, half full, nominal bore, n 0.009, 0.012, 0.013, 0.015 · computed · 0.5 %, 0.01 ft/s
describe('capacity half full, gpm and ft/s', () => {
  test.each([
    ['row 1', 1.5, 0.25, [6.51, 4.88, 4.51, 3.91], [2.36, 1.77, 1.64, 1.42]],
    ['row 2', 2, 0.25, [14, 10.5, 9.71, 8.41], [2.86, 2.15, 1.98, 1.72]],
    ['row 3', 2, 0.125, [9.92, 7.44, 6.86, 5.95], [2.03, 1.52, 1.4, 1.22]],
    ['row 4', 3, 0.125, [29.2, 21.9, 20.2, 17.5], [2.65, 1.99, 1.84, 1.59]],
    ['row 5', 3, 0.25, [41.4, 31, 28.6, 24.8], [3.75, 2.81, 2.6, 2.25]],
    ['row 6', 4, 0.25, [89, 66.8, 61.7, 53.4], [4.55, 3.41, 3.15, 2.73]],
  ])('%s: %d in, %d in/ft', (_row, size, fall, gpm, speeds) => {
    [0.009, 0.012, 0.013, 0.015].forEach((roughness, i) => {
      const drain = { boreM: size * INCH, slope: fall / 12, roughness, depth: 0.5 };
      expect(Math.abs(fromSI(valueOf(drainFlow(drain)), 'gpm') / (gpm[i] ?? Number.NaN) - 1)).toBeLessThan(0.005);
      expect(Math.abs(fromSI(valueOf(drainSpeed(drain)), 'ft/s') - (speeds[i] ?? Number.NaN))).toBeLessThan(0.01);
    });
  });

  // regression: full bore is twice half full · computed · 0.1 gpm
  test('2 in at ¼ in/ft, n 0.012, full: 21 gpm', () => {
    const full = drainFlow({ boreM: 2 * INCH, slope: 1 / 48, roughness: 0.012, depth: 1 });
    expect(Math.abs(fromSI(valueOf(full), 'gpm') - 21)).toBeLessThan(0.1);
  });
});
