import { describe, expect, test } from 'vitest';
import { queueLength } from '../../src/topics/capacity';
import { queueTime } from '../support/oracles/queueTime';
import { valueOf } from '../support/valueOf';

const station = (load: number, serviceCv2: number) => ({ arrivalsPerH: load * 60, serviceS: 60, serviceCv2 });

// regression: from M/D/1 in the Saylor course text, §4.5 (read) · computed · 1e-6
describe('M/D/1', () => {
  test.each([
    [0.5, 0.25, 0.75],
    [0.7, 0.816667, 1.516667],
    [0.8, 1.6, 2.4],
    [0.9, 4.05, 4.95],
  ])('load %d: Lq %d, L %d', (load, waiting, present) => {
    expect(Math.abs(valueOf(queueLength({ ...station(load, 0), counts: 'waiting' })) - waiting)).toBeLessThan(1e-6);
    expect(Math.abs(valueOf(queueLength({ ...station(load, 0), counts: 'present' })) - present)).toBeLessThan(1e-6);
  });

  test('load 0.8: Wq 2, W 3 services', () => {
    expect(queueTime({ ...station(0.8, 0), counts: 'waiting' }) / 60).toBeCloseTo(2, 9);
    expect(queueTime({ ...station(0.8, 0), counts: 'present' }) / 60).toBeCloseTo(3, 9);
  });
});

// regression: M/G/1 with c² ¼, M/M/1 · computed · 1e-6
test.each([
  [0.8, 0.25, 2, 2.8],
  [0.7, 1, 1.633333, 2.333333],
  [0.5, 1, 0.5, 1],
])('load %d, c² %d: Lq %d, L %d', (load, cv2, waiting, present) => {
  expect(Math.abs(valueOf(queueLength({ ...station(load, cv2), counts: 'waiting' })) - waiting)).toBeLessThan(1e-6);
  expect(Math.abs(valueOf(queueLength({ ...station(load, cv2), counts: 'present' })) - present)).toBeLessThan(1e-6);
});

// source: Saylor course text, §4.5: Lq = ρ²/(2(1 − ρ)), Ls = (2ρ − ρ²)/(2(1 − ρ)), Wq = ρ/(2μ(1 − ρ)), Ws = (2 − ρ)/(2μ(1 − ρ)) · read · 1e-9
test.each([0.1, 0.35, 0.6, 0.95])('the printed formulas at a load of %d', (load) => {
  const twice = 2 * (1 - load);
  expect(valueOf(queueLength({ ...station(load, 0), counts: 'waiting' }))).toBeCloseTo(load ** 2 / twice, 9);
  expect(valueOf(queueLength({ ...station(load, 0), counts: 'present' }))).toBeCloseTo((2 * load - load ** 2) / twice, 9);
  expect(queueTime({ ...station(load, 0), counts: 'waiting' }) / 60).toBeCloseTo(load / twice, 9);
  expect(queueTime({ ...station(load, 0), counts: 'present' }) / 60).toBeCloseTo((2 - load) / twice, 9);
});
