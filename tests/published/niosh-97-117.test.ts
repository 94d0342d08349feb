import { describe, expect, test } from 'vitest';
import { workHeightBand } from '../../src/topics/people';

const mm = (value: number | null) => (value ?? Number.NaN) * 1000;

// source: NIOSH 97-117, Elements of Ergonomics Programs, figure restated · secondary · exact
describe('NIOSH benches, inches', () => {
  test.each([
    ['precision', 37, 43],
    ['light', 34, 37],
    ['heavy', 28, 35],
  ] as const)('%s: %d to %d in', (task, min, max) => {
    const band = workHeightBand('niosh-bench', task, 1);
    expect([mm(band.min) / 25.4, mm(band.max) / 25.4]).toEqual([expect.closeTo(min, 9), expect.closeTo(max, 9)]);
  });
});
