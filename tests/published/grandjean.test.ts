import { describe, expect, test } from 'vitest';
import { judge, workHeight, workHeightBand } from '../../src/engineering';
import { valueOf } from '../support/valueOf';

const mm = (value: number | null) => (value ?? Number.NaN) * 1000;

// regression: L-ET1 · from Grandjean as a handbook in a public file restates it (L-E12, secondary): shoe 25 mm, h = E + 25 − d · computed · exact
describe('Grandjean', () => {
  test.each([
    [975, 100, 900],
    [975, 150, 850],
    [1160, 100, 1085],
    [1160, 150, 1035],
  ])('elbow %d mm, %d mm below: %d mm', (elbow, below, height) => {
    const found = valueOf(workHeight({ elbowM: elbow / 1000, shoeM: 0.025, belowElbowM: below / 1000 }));
    expect(mm(found)).toBeCloseTo(height, 9);
  });

  // source: L-E12 · Grandjean restated: light 100-150, heavy 150-400 mm below, precision 50-100 mm above the elbow in shoes · secondary · exact
  test.each([
    ['light', 850, 900],
    ['heavy', 600, 850],
    ['precision', 1050, 1100],
  ] as const)('%s work for an elbow of 975 mm: %d to %d mm', (task, min, max) => {
    const band = workHeightBand('grandjean', task, 0.975);
    expect([mm(band.min), mm(band.max)]).toEqual([expect.closeTo(min, 6), expect.closeTo(max, 6)]);
  });

  // regression: L-ET2 · tables of 34 and 36 in for light work · computed · exact
  test('34 in suit a small woman and lie far below a tall man, 36 in are above her band', () => {
    expect(judge(workHeightBand('grandjean', 'light', 0.975), 0.8636)).toBe('pass');
    expect(judge(workHeightBand('grandjean', 'light', 1.16), 0.8636)).toBe('low');
    expect(judge(workHeightBand('grandjean', 'light', 0.975), 0.9144)).toBe('high');
    expect(mm(workHeightBand('grandjean', 'light', 1.16).min) - 863.6).toBeCloseTo(171.4, 6);
    expect(mm(workHeightBand('grandjean', 'light', 1.16).max) - 863.6).toBeCloseTo(221.4, 6);
  });
});
