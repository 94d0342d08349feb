import { describe, expect, test } from 'vitest';
import { BODIES, type BodyMeasures, CIVILIAN_ELBOW, reachOverDepth } from '../../src/topics/people';
import { valueOf } from '../support/valueOf';

// source: MIL-STD-1472G App. B in NUREG-0700 Rev. 3, Table 11.4, inches and centimetres · read · 0.1 in, exact cm
describe('5th percentile woman and 95th percentile man', () => {
  test.each<[keyof BodyMeasures, number, number, number, number]>([
    ['statureM', 63.5, 161.2, 73.9, 187.8],
    ['eyeM', 59.1, 150.1, 69.1, 175.6],
    ['shoulderM', 48.4, 123, 61.2, 155.3],
    ['elbowM', 38.4, 97.5, 45.7, 116],
    ['fingertipM', 21.7, 55.1, 28.5, 72.4],
    ['reachM', 26.7, 67.7, 34.9, 88.6],
    ['extendedReachM', 28.9, 73.5, 37.1, 94.2],
  ])('%s', (key, womanIn, womanCm, manIn, manCm) => {
    for (const [body, inches, cm] of [
      ['small-woman', womanIn, womanCm],
      ['tall-man', manIn, manCm],
    ] as const) {
      expect(BODIES[body][key] * 100).toBeCloseTo(cm, 9);
      expect(Math.abs(BODIES[body][key] / 0.0254 - inches)).toBeLessThan(0.1);
    }
  });
});

// regression: a reach of 677 mm over tables of 24 and 30 in · computed · exact
test.each([
  [24, true],
  [30, false],
])('the rear of a table of %d in is within reach: %s', (inches, within) => {
  const left = valueOf(reachOverDepth({ reachM: BODIES['small-woman'].reachM, depthM: inches * 0.0254 }));
  expect(left >= 0).toBe(within);
});

// source: elbow of civilian women, compiled in a public file: 93 cm, below that of MIL-STD-1472's women · secondary · exact
test('a civilian elbow lies below the military one', () => {
  expect(CIVILIAN_ELBOW).toBe(0.93);
  expect(CIVILIAN_ELBOW).toBeLessThan(BODIES['small-woman'].elbowM);
});
