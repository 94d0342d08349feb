import { test } from 'vitest';
import { DUCT_ENTRIES } from '../../src/topics/duct';
import { exhaustByCapture } from '../../src/topics/hood';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// source: ACGIH Industrial Ventilation, 24th ed. 2001, fig. 3-16 and grinding-hood figure, as reprinted · secondary · exact
test.each([
  ['plain-end', 0.93],
  ['flanged-end', 0.49],
  ['bellmouth-hood', 0.04],
  ['tapered-take-off', 0.4],
  ['straight-take-off', 0.65],
] as const)('%s: %d', (entry, printed) => expectNear(DUCT_ENTRIES[entry].coefficient, printed, 0));

// source: ACGIH Industrial Ventilation, 24th ed. 2001, canopy hood, Q = 1.4 P V D, as reprinted · secondary · exact
test('16 ft, 3 ft, 50 fpm: 3,360 cfm', () => {
  const hood = { openPerimeterM: 16 * 0.3048, heightM: 3 * 0.3048, captureMs: toSI(50, 'fpm') };
  expectNear(fromSI(valueOf(exhaustByCapture(hood)), 'cfm'), 3360, 1e-9 * 3360);
});
