import { describe, expect, test } from 'vitest';
import { workHeightBand } from '../../src/engineering';

const mm = (value: number | null) => (value ?? Number.NaN) * 1000;

// source: L-E10 · Pheasant and Haslegrave, Bodyspace, 3rd ed. 2006, in the Ontario MSD prevention guide: below the elbow · read · exact
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
