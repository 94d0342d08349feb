import { expect, test } from 'vitest';
import { voltsToGround, workingDepth } from '../../src/topics/power';
import { valueOf } from '../support/valueOf';

// source: trade article, ecmweb.com 20898893 · secondary · whole volts, exact feet
test.each([
  [208, 120, 'A', 3],
  [208, 120, 'C', 3],
  [480, 277, 'B', 3.5],
] as const)('%d V three-phase is %d V to ground; condition %s: %d ft', (voltageV, toGround, condition, feet) => {
  const volts = valueOf(voltsToGround({ voltageV, supply: 'wye' }));
  expect(Math.round(volts)).toBe(toGround);
  expect(valueOf(workingDepth({ voltsToGround: volts, condition })) / 0.3048).toBeCloseTo(feet, 12);
});
