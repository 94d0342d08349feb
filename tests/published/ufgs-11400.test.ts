import { describe, expect, test } from 'vitest';
import { fallOver, racksOnTable } from '../../src/engineering';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: L-08 · UFGS 11400A §2.4.2.2: rack slide 20½ in (520 mm) square, guides 20 in (500 mm) apart · read
// regression: L-LT3, L-LT4 · whole racks at both pitches · computed · exact
describe('racks on a clear length', () => {
  test.each([
    [36, 1, 1],
    [48, 2, 2],
    [60, 3, 2],
    [72, 3, 3],
    [84, 4, 4],
    [96, 4, 4],
  ])('%d in: %d at 20 in, %d at 20½ in', (length, plain, wide) => {
    const racks = (pitch: number) => valueOf(racksOnTable({ lengthM: length * INCH, pitchM: pitch * INCH }));
    expect([racks(20), racks(20.5)]).toEqual([plain, wide]);
  });
});

// source: L-09 · UFGS 11400A §2.4.2.6: slope 1 % = ⅛ in/ft · read · the print is soft: ⅛ in/ft is 1.0417 %
test('⅛ in/ft over a foot is 1 % in whole per cent', () => {
  const fall = valueOf(fallOver({ lengthM: 0.3048, slope: 1 / 96 })) / 0.3048;
  expect(Math.round(fall * 100)).toBe(1);
  expect(fall * 100).toBeCloseTo(1.0417, 4);
});

// regression: L-LT1, L-LT2 · fall of a table · computed · exact
test.each([
  [60, 96, 0.625],
  [72, 96, 0.75],
  [60, 48, 1.25],
])('%d in at 1/%d: %d in', (length, run, drop) => {
  expect(valueOf(fallOver({ lengthM: length * INCH, slope: 1 / run })) / INCH).toBeCloseTo(drop, 12);
});
