import { test } from 'vitest';
import { exhaustByFloor } from '../../src/topics/hood';
import { fromSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// source: EN 16282-1 quick method, dishwashing 120 m³ an hour to a square metre, as constants in a public repository · secondary · exact
test.each([
  [1, 120],
  [25, 3000],
])('%d m²: %d m³/h', (floorM2, printed) => expectNear(fromSI(valueOf(exhaustByFloor({ floorM2 })), 'm3/h'), printed, 1e-9 * printed));
