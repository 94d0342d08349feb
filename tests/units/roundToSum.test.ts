import { describe, expect, it } from 'vitest';
import { roundToSum } from '../../src/units';
import { createRandom } from '../support/seeded';

describe('roundToSum', () => {
  it.each([
    { name: 'nothing', parts: [], rounded: [] },
    { name: 'whole numbers stay', parts: [400, 0, 100], rounded: [400, 0, 100] },
    { name: 'the larger remainder is rounded up', parts: [423.4, 100.3], rounded: [424, 100] },
    { name: 'of three halves one is rounded down', parts: [1.5, 2.5, 3.5], rounded: [2, 3, 3] },
    { name: 'the smaller remainder is rounded down', parts: [0.6, 0.7, 0.1], rounded: [0, 1, 0] },
  ])('$name', ({ parts, rounded }) => expect(roundToSum(parts)).toEqual(rounded));

  it('adds up, and moves no part by 1, whatever the parts', () => {
    const random = createRandom(20_261_130);
    for (let i = 0; i < 300; i++) {
      const parts = Array.from({ length: 1 + Math.floor(random() * 6) }, () => random() * 5000);
      const rounded = roundToSum(parts);
      expect(rounded.reduce((sum, one) => sum + one, 0)).toBe(Math.round(parts.reduce((sum, one) => sum + one, 0)));
      expect(parts.every((part, k) => Math.abs((rounded[k] ?? Number.NaN) - part) < 1)).toBe(true);
    }
  });
});
