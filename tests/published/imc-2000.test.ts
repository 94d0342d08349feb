import { test } from 'vitest';
import { olderExhaustByArea, olderExhaustByPerimeter } from '../../src/topics/hood';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const areaM2 = toSI(16, 'ft2');

// source: IMC 2000, 507.13, low-temperature canopy of 16 ft², 16 ft and 3 ft, as restated · secondary · exact
test.each([
  ['75 A', olderExhaustByArea({ areaM2, openSides: '4' }), 1200],
  ['50 A', olderExhaustByArea({ areaM2, openSides: '3' }), 800],
  ['50 P D', olderExhaustByPerimeter({ openPerimeterM: 16 * 0.3048, heightM: 3 * 0.3048 }), 2400],
])('%s', (_name, computed, printed) => expectNear(fromSI(valueOf(computed), 'cfm'), printed, 1e-9 * printed));
