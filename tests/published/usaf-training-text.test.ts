import { test } from 'vitest';
import { airChanges } from '../../src/topics/air';
import { toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';

// source: USAF training text, ventilation, a room of 20 × 14 × 12 ft has 3360 ft³: 560 cfm change it ten times an hour · read · exact
test('ten changes', () => expectNear(airChanges({ airflowM3s: toSI(560, 'cfm'), volumeM3: 20 * 14 * 12 * 0.3048 ** 3 }), 10, 1e-9));
