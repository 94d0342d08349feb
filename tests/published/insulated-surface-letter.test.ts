import { test } from 'vitest';
import { innerSurface, rValue } from '../../src/topics/air';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// The surface stands in the warm air: that side is the inner one of the formula.
const wall = { insideC: toSI(90, 'F'), outsideC: toSI(40, 'F'), insideR: rValue(1.67), wallR: rValue(8), outsideR: rValue(0.2) };
const surfaceF = fromSI(valueOf(innerSurface(wall)), 'F');

// source: Letter on insulated surfaces, solar message 3462: R 0.2, 8 and 1.67 between 40 and 90 °F · secondary · 0.005
test.each([
  ['surface, °F', surfaceF, 81.54],
  ['heat, Btu/h to a ft²', (90 - surfaceF) / 1.67, 5.066],
])('%s', (_name, computed, printed) => expectNear(computed, printed, 0.005));
