import { expect, test } from 'vitest';
import { fixtureUnitsOfFlow } from '../../src/topics/drain';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: Redwood City code: a fixture unit is 7.5 gpm, about a cubic foot a minute · read · exact; 0.3 %
test.each([
  [7.5, 1],
  [30, 4],
])('%d gpm: %d units', (gpm, units) => {
  expect(valueOf(fixtureUnitsOfFlow({ flowM3S: toSI(gpm, 'gpm'), rule: 'cubic-foot' }))).toBeCloseTo(units, 9);
});

test('a cubic foot a minute is one unit', () => {
  const units = valueOf(fixtureUnitsOfFlow({ flowM3S: toSI(1, 'cfm'), rule: 'cubic-foot' }));
  expect(Math.abs(units - 1)).toBeLessThan(0.003);
});
