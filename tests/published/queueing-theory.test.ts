import { expect, test } from 'vitest';
import { twoStationRate } from '../../src/topics/capacity';
import { valueOf } from '../support/valueOf';

/** Standard formulas of queueing theory, known from memory; the values are exact fractions, worked out apart from the program. */

// regression: two equal stations, μ (N + 2) / (N + 3), checked with a Markov chain · computed · exact
test.each([
  [0, 2 / 3],
  [1, 3 / 4],
  [2, 4 / 5],
  [3, 5 / 6],
  [5, 7 / 8],
])('two equal stations with %d places between: %d of the rate', (buffer, share) => {
  expect(valueOf(twoStationRate({ firstPerH: 60, secondPerH: 60, buffer })) / 60).toBeCloseTo(share, 12);
});

// regression: two unequal stations, checked with a Markov chain · computed · 1e-6
test.each([
  [100, 125, 0, 4500 / 61],
  [100, 125, 1, 30_500 / 369],
  [100, 125, 2, 184_500 / 2101],
  [60, 40, 0, 31.578947],
  [60, 40, 1, 35.076923],
  [60, 40, 2, 36.966825],
  [60, 40, 5, 39.187946],
])('%d and %d an hour, %d places: %d', (firstPerH, secondPerH, buffer, rate) => {
  expect(Math.abs(valueOf(twoStationRate({ firstPerH, secondPerH, buffer })) - rate)).toBeLessThan(1e-6);
});
