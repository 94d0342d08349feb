import { describe, expect, test } from 'vitest';
import { lostShare, numberAtFullQueue, turnedAwayShare, twoStationRate, waitingAtServers, waitingShare } from '../../src/engineering';
import { valueOf } from '../support/valueOf';

/** Standard formulas of queueing theory, known from memory; the values are exact fractions, worked out apart from the program. */

// regression: L-Q06 · Erlang C as exact fractions · computed · 1e-12
describe('Erlang C', () => {
  test.each([
    [1, 0.8, 0.8],
    [2, 1, 1 / 3],
    [2, 1.5, 9 / 14],
    [2, 1.6, 32 / 45],
    [3, 2, 4 / 9],
    [3, 2.4, 288 / 445],
    [4, 3, 27 / 53],
    [5, 4, 128 / 231],
    [10, 8, 4_194_304 / 10_250_507],
  ])('%d servers, load %d: %d', (servers, offered, share) => expect(valueOf(waitingShare({ servers, offered }))).toBeCloseTo(share, 12));
});

// regression: L-Q07 · Erlang B as exact fractions · computed · 1e-12, 1e-6 for the last
describe('Erlang B', () => {
  test.each([
    [2, 1, 1 / 5, 12],
    [3, 2, 4 / 19, 12],
    [4, 3, 27 / 131, 12],
    [5, 4, 128 / 643, 12],
    [10, 8, 0.121661, 6],
  ])('%d servers, load %d: %d', (servers, offered, share, digits) =>
    expect(valueOf(lostShare({ servers, offered }))).toBeCloseTo(share, digits),
  );
});

// regression: L-Q08 · Lq = C ρ / (1 − ρ) · computed · 1e-12
test.each([
  [3, 2, 8 / 9],
  [5, 4, 512 / 231],
  [2, 1.6, 128 / 45],
])('%d servers, load %d: %d wait', (servers, offered, waiting) =>
  expect(valueOf(waitingAtServers({ servers, offered }))).toBeCloseTo(waiting, 11),
);

// regression: L-Q09 · M/M/1/K · computed · 1e-7
test.each([
  [0.5, 3, 1 / 15],
  [0.8, 5, 0.0888195],
])('load %d, %d places: %d turned away', (load, places, share) => {
  expect(Math.abs(valueOf(turnedAwayShare({ arrivalsPerH: load * 60, serviceS: 60, places })) - share)).toBeLessThan(1e-7);
});

// regression: L-Q10 · inputs of a tutorial, 1.8/h, ½ h, 10 + 2 places (the 2 by convention, from memory) · computed · 1e-6
test('a blocked station: 1.731836/h pass, 4.569367 are there, for 2.638452 h', () => {
  const station = { arrivalsPerH: 1.8, serviceS: 1800, places: 12 };
  const passed = 1.8 * (1 - valueOf(turnedAwayShare(station)));
  const present = valueOf(numberAtFullQueue(station));
  expect(Math.abs(passed - 1.731836)).toBeLessThan(1e-6);
  expect(Math.abs(present - 4.569367)).toBeLessThan(1e-6);
  expect(Math.abs(present / passed - 2.638452)).toBeLessThan(1e-6);
});

// regression: L-Q11 · two equal stations, μ (N + 2) / (N + 3), checked with a Markov chain · computed · exact
test.each([
  [0, 2 / 3],
  [1, 3 / 4],
  [2, 4 / 5],
  [3, 5 / 6],
  [5, 7 / 8],
])('two equal stations with %d places between: %d of the rate', (buffer, share) => {
  expect(valueOf(twoStationRate({ firstPerH: 60, secondPerH: 60, buffer })) / 60).toBeCloseTo(share, 12);
});

// regression: L-Q12 · two unequal stations, checked with a Markov chain · computed · 1e-6
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
