import { expect, test } from 'vitest';
import { manifoldLimit, washLimit } from '../../src/topics/heat';
import { fromSI } from '../../src/units';

// source: Nevada Administrative Code 446.355, wash and rinse of hot-water machines · read · exact
test.each([
  ['stationary-dual', 150, 180],
  ['stationary-single', 165, 165],
  ['conveyor-single-tank', 160, 180],
  ['conveyor-multi-tank', 150, 180],
] as const)('%s: wash %d °F, final rinse %d °F', (machine, wash, rinse) => {
  expect(fromSI(washLimit(machine, 'hot-water').min ?? 0, 'F')).toBeCloseTo(wash, 9);
  expect(fromSI(manifoldLimit(machine).min ?? 0, 'F')).toBeCloseTo(rinse, 9);
});
