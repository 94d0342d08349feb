import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { airChanges, KITCHEN_SUPPLY_CHANGES } from '../../src/topics/air';
import { exhaustByArea } from '../../src/topics/hood';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// source: VA HVAC design manual (hospitals), 3.12.8, 50 to 100 cfm/ft² of hood, 4 × 4 ft · read · exact
test.each([
  ['least', 800],
  ['most', 1600],
] as const)('%s: %d cfm', (rate, printed) =>
  expectNear(fromSI(valueOf(exhaustByArea({ areaM2: toSI(16, 'ft2'), rate })), 'cfm'), printed, 1e-9 * printed),
);

// source: VA HVAC design manual (hospitals), 3.12.2, kitchen supply of at least 10 air changes · read · exact
test('10 changes', () => {
  expect([10, 9.99].map((changes) => judge(KITCHEN_SUPPLY_CHANGES, changes))).toEqual(['pass', 'low']);
  expectNear(airChanges({ airflowM3s: toSI(560, 'cfm'), volumeM3: toSI(3360, 'ft3') }), 10, 1e-9);
});
