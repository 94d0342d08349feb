import { describe, expect, test } from 'vitest';
import { bendFactor } from '../../src/topics/duct';

const factor = (angleDeg: number, rule: 'k-table' | 'proportional') => {
  const outcome = bendFactor({ angleDeg, rule });
  return outcome.ok ? outcome.value : Number.NaN;
};

// source: SMACNA HVAC Systems Duct Design, 4th ed., Table A-7 note 1, as restated in a public copy · secondary · exact
describe('angle factors of round bends', () => {
  test.each([
    [30, 0.45],
    [45, 0.6],
    [60, 0.78],
    [90, 1],
    [180, 1.4],
  ])('%s° counts %s of a right angle', (angle, expected) => expect(factor(angle, 'k-table')).toBeCloseTo(expected, 12));
});

// source: industrial-ventilation habit, a velocity-pressure sheet · weak · exact
describe('by the habit of proportion', () => {
  test.each([
    [60, 2 / 3],
    [45, 1 / 2],
    [30, 1 / 3],
  ])('%s° counts %s of a right angle', (angle, expected) => expect(factor(angle, 'proportional')).toBeCloseTo(expected, 12));
});
