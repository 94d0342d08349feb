import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { queueLength } from '../../../src/topics/capacity';
import { valueOf } from '../valueOf';
import { lostShare, waitingAtServers, waitingShare } from './erlang';
import { numberAtFullQueue, turnedAwayShare } from './fullQueue';

/** The values are exact fractions, worked out apart from the formulas. */

// Erlang C as exact fractions
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
  ])('%d servers, load %d: %d', (servers, offered, share) => expect(waitingShare({ servers, offered })).toBeCloseTo(share, 12));
});

// Erlang B as exact fractions
describe('Erlang B', () => {
  test.each([
    [2, 1, 1 / 5, 12],
    [3, 2, 4 / 19, 12],
    [4, 3, 27 / 131, 12],
    [5, 4, 128 / 643, 12],
    [10, 8, 0.121661, 6],
  ])('%d servers, load %d: %d', (servers, offered, share, digits) => expect(lostShare({ servers, offered })).toBeCloseTo(share, digits));
});

// Lq = C ρ / (1 − ρ)
test.each([
  [3, 2, 8 / 9],
  [5, 4, 512 / 231],
  [2, 1.6, 128 / 45],
])('%d servers, load %d: %d wait', (servers, offered, waiting) => expect(waitingAtServers({ servers, offered })).toBeCloseTo(waiting, 11));

// M/M/1/K
test.each([
  [0.5, 3, 1 / 15],
  [0.8, 5, 0.0888195],
])('load %d, %d places: %d turned away', (load, places, share) => {
  expect(Math.abs(turnedAwayShare({ arrivalsPerH: load * 60, serviceS: 60, places }) - share)).toBeLessThan(1e-7);
});

// Inputs of a tutorial, 1.8/h, ½ h, 10 + 2 places (the 2 by convention, from memory)
test('a blocked station: 1.731836/h pass, 4.569367 are there, for 2.638452 h', () => {
  const station = { arrivalsPerH: 1.8, serviceS: 1800, places: 12 };
  const passed = 1.8 * (1 - turnedAwayShare(station));
  const present = numberAtFullQueue(station);
  expect(Math.abs(passed - 1.731836)).toBeLessThan(1e-6);
  expect(Math.abs(present - 4.569367)).toBeLessThan(1e-6);
  expect(Math.abs(present / passed - 2.638452)).toBeLessThan(1e-6);
});

test('with one server the formulas of Erlang are those of one queue', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (offered) => {
      expect(waitingShare({ servers: 1, offered })).toBeCloseTo(offered, 12);
      expect(lostShare({ servers: 1, offered })).toBeCloseTo(offered / (1 + offered), 12);
      const queue = valueOf(queueLength({ arrivalsPerH: offered * 60, serviceS: 60, serviceCv2: 1, counts: 'waiting' }));
      expect(waitingAtServers({ servers: 1, offered })).toBeCloseTo(queue, 8);
    }),
    { seed: 7, numRuns: 100 },
  );
});

test('with many places nobody is turned away, and the number is that of a free queue', () => {
  const station = { arrivalsPerH: 40, serviceS: 60, places: 400 };
  expect(turnedAwayShare(station)).toBeLessThan(1e-60);
  const free = valueOf(queueLength({ arrivalsPerH: 40, serviceS: 60, serviceCv2: 1, counts: 'present' }));
  expect(numberAtFullQueue(station)).toBeCloseTo(free, 9);
});

test('at a load of 1 every number is as likely as another', () => {
  expect(turnedAwayShare({ arrivalsPerH: 60, serviceS: 60, places: 4 })).toBeCloseTo(1 / 5, 12);
});
