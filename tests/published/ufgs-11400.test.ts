import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { racksOnTable } from '../../src/topics/capacity';
import {
  BACKSPLASH_HEIGHT,
  PRE_RINSE_DEPTH,
  PRE_RINSE_SIZE,
  RIM_HEIGHT,
  SCRAP_WIDTH,
  TROUGH_COVER,
  TROUGH_DEPTH,
  TROUGH_FALL,
  TROUGH_INLET,
} from '../../src/topics/cleanliness';
import { fallOver } from '../../src/topics/drain';
import { COVE_RADIUS, RACK_CLEARANCE, RACK_SLIDE, RIM_ROLL } from '../../src/topics/line';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: UFGS 11400A §2.4.2.2: rack slide 20½ in (520 mm) square, guides 20 in (500 mm) apart · read
// regression: whole racks at both pitches · computed · exact
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

// source: UFGS 11400A §2.4.2.6: slope 1 % = ⅛ in/ft · read · the print is soft: ⅛ in/ft is 1.0417 %
test('⅛ in/ft over a foot is 1 % in whole per cent', () => {
  const fall = valueOf(fallOver({ lengthM: 0.3048, slope: 1 / 96 })) / 0.3048;
  expect(Math.round(fall * 100)).toBe(1);
  expect(fall * 100).toBeCloseTo(1.0417, 4);
});

// regression: fall of a table · computed · exact
test.each([
  [60, 96, 0.625],
  [72, 96, 0.75],
  [60, 48, 1.25],
])('%d in at 1/%d: %d in', (length, run, drop) => {
  expect(valueOf(fallOver({ lengthM: length * INCH, slope: 1 / run })) / INCH).toBeCloseTo(drop, 12);
});

// source: UFGS 11400N §2.4.2.4: edge turned up 3 in (75 mm), backsplash 10 in (250 mm) · read · exact inches
test.each([
  [RIM_HEIGHT, 3, 'pass'],
  [RIM_HEIGHT, 2.9, 'low'],
  [BACKSPLASH_HEIGHT, 10, 'pass'],
  [BACKSPLASH_HEIGHT, 9.9, 'low'],
] as const)('$title of %d in: %s', (limit, inches, expected) => expect(judge(limit, inches * INCH)).toBe(expected));

// source: UFGS 11400A §2.4.2.6: sink 18 × 18 in (450 × 450 mm), 188 mm deep · read · exact
test.each([
  [PRE_RINSE_SIZE, 18 * INCH, 'pass'],
  [PRE_RINSE_SIZE, 17.9 * INCH, 'low'],
  [PRE_RINSE_DEPTH, 0.188, 'pass'],
  [PRE_RINSE_DEPTH, 0.187, 'low'],
] as const)('$title of %d m: %s', (limit, metres, expected) => expect(judge(limit, metres)).toBe(expected));

// source: UFGS 11400A §2.4.2.6: scrap trough 8 in (200 mm) wide at least · read · either print
test.each([
  [8 * INCH, 'pass'],
  [0.2, 'pass'],
  [0.199, 'low'],
] as const)('a trough of %d m: %s', (metres, expected) => expect(judge(SCRAP_WIDTH, metres)).toBe(expected));

// source: UFGS 11400A §2.4.2.6: trough from 4 in (100 mm) deep, falling 1 % = ⅛ in/ft · read · either print
test.each([
  [TROUGH_DEPTH, 4 * INCH, 'pass'],
  [TROUGH_DEPTH, 0.1, 'pass'],
  [TROUGH_DEPTH, 0.099, 'low'],
  [TROUGH_FALL, 0.01, 'pass'],
  [TROUGH_FALL, 1 / 96, 'pass'],
  [TROUGH_FALL, 1 / 120, 'low'],
] as const)('$title of %d: %s', (limit, value, expected) => expect(judge(limit, value)).toBe(expected));

// source: UFGS 11400A §2.4.2.6: one 20 in cover to 36 in of trough; inlets at 48 in on centre from the shallow end · read · exact
test.each([
  [TROUGH_COVER, 36, 'pass'],
  [TROUGH_COVER, 36.1, 'high'],
  [TROUGH_INLET, 48, 'pass'],
  [TROUGH_INLET, 48.1, 'high'],
] as const)('$title of %d in: %s', (limit, inches, expected) => expect(judge(limit, inches * INCH)).toBe(expected));

// source: UFGS 11400A §2.4.2.2: frame of the rack slide 20½ in (520 mm) square · read · either print
test.each([
  [20.5 * INCH, 'pass'],
  [0.52, 'pass'],
  [20 * INCH, 'low'],
] as const)('a rack slide of %d m: %s', (metres, expected) => expect(judge(RACK_SLIDE, metres)).toBe(expected));

// source: UFGS 11400N §2.4.2.4: rolled rim of 1¾ in (45 mm), cove of ⅝ in (15 mm) · read · as printed
test.each([
  [RIM_ROLL, 1.75 * INCH, 'pass'],
  [COVE_RADIUS, 0.625 * INCH, 'pass'],
  [COVE_RADIUS, 0.015, 'pass'],
  [COVE_RADIUS, 0.014, 'low'],
] as const)('$title of %d m: %s', (limit, metres, expected) => expect(judge(limit, metres)).toBe(expected));

test('1¾ in is printed as 45 mm', () => expect(Math.abs((RIM_ROLL.min ?? 0) - 0.045)).toBeLessThan(0.001));

// memory: trade convention: 20¼ to 20½ in between rims, for racks of 20 in · memory · exact
test.each([
  [20.25, 'pass'],
  [20.5, 'pass'],
  [20.2, 'low'],
] as const)('%d in between rims: %s', (inches, expected) => expect(judge(RACK_CLEARANCE, inches * INCH)).toBe(expected));
