import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { workHeightBand } from '../../src/topics/people';

const mm = (value: number | null) => (value ?? Number.NaN) * 1000;

describe('Grandjean', () => {
  // source: Grandjean restated: light 100-150, heavy 150-400 mm below, precision 50-100 mm above the elbow in shoes · secondary · exact
  test.each([
    ['light', 850, 900],
    ['heavy', 600, 850],
    ['precision', 1050, 1100],
  ] as const)('%s work for an elbow of 975 mm: %d to %d mm', (task, min, max) => {
    const band = workHeightBand('grandjean', task, 0.975);
    expect([mm(band.min), mm(band.max)]).toEqual([expect.closeTo(min, 6), expect.closeTo(max, 6)]);
  });

  // regression: tables of 34 and 36 in for light work · computed · exact
  test('34 in suit a small woman and lie far below a tall man, 36 in are above her band', () => {
    expect(judge(workHeightBand('grandjean', 'light', 0.975), 0.8636)).toBe('pass');
    expect(judge(workHeightBand('grandjean', 'light', 1.16), 0.8636)).toBe('low');
    expect(judge(workHeightBand('grandjean', 'light', 0.975), 0.9144)).toBe('high');
    expect(mm(workHeightBand('grandjean', 'light', 1.16).min) - 863.6).toBeCloseTo(171.4, 6);
    expect(mm(workHeightBand('grandjean', 'light', 1.16).max) - 863.6).toBeCloseTo(221.4, 6);
  });
});
