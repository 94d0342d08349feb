import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { WORK_HEIGHT_RANGES, workHeightBand } from '../../src/topics/people';

const mm = (value: number | null) => (value ?? Number.NaN) * 1000;

// source: Pheasant and Haslegrave, Bodyspace, 3rd ed. 2006, in the Ontario MSD prevention guide: below the elbow · read · exact
describe('Bodyspace, elbow of 1 m', () => {
  test.each([
    ['precision', 1050, 1100],
    ['light', 900, 950],
    ['heavy', 750, 900],
  ] as const)('%s: %d to %d mm', (task, min, max) => {
    const band = workHeightBand('bodyspace', task, 1);
    expect([mm(band.min), mm(band.max)]).toEqual([expect.closeTo(min, 6), expect.closeTo(max, 6)]);
  });
});

// source: the same, ranges that suit 90 % of workers: precision 102–132 cm, light 87–117 cm, heavy 72–112 cm · read · exact
describe('Bodyspace, ranges for 90 % of workers', () => {
  test.each([
    ['precision', 1.02, 1.32],
    ['light', 0.87, 1.17],
    ['heavy', 0.72, 1.12],
  ] as const)('%s: %d to %d m', (task, min, max) => {
    const heights = [min - 0.01, min, max, max + 0.01];
    expect(heights.map((height) => judge(WORK_HEIGHT_RANGES[task], height))).toEqual(['low', 'pass', 'pass', 'high']);
  });
});
