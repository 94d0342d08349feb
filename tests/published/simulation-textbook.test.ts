import { expect, test } from 'vitest';
import { queueLength } from '../../src/topics/capacity';
import { queueTime } from '../support/oracles/queueTime';
import { valueOf } from '../support/valueOf';

// source: simulation textbook, problem 2.6.1, solved at rstudio-pubs 305152: 1.25 min between arrivals, 1 min of service · read · exact
test('M/M/1: Lq 3.2, L 4, Wq 4 min, W 5 min', () => {
  const station = { arrivalsPerH: 48, serviceS: 60, serviceCv2: 1 };
  expect(valueOf(queueLength({ ...station, counts: 'waiting' }))).toBeCloseTo(3.2, 9);
  expect(valueOf(queueLength({ ...station, counts: 'present' }))).toBeCloseTo(4, 9);
  expect(queueTime({ ...station, counts: 'waiting' }) / 60).toBeCloseTo(4, 9);
  expect(queueTime({ ...station, counts: 'present' }) / 60).toBeCloseTo(5, 9);
});
