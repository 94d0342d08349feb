import { test } from 'vitest';
import { colebrook, roundedBend } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const frictionFactor = valueOf(colebrook({ reynolds: (4 * 0.6) / 1.14e-6, relativeRoughness: 0.02e-3 / 0.6 }));
const bend = { angleDeg: 90, radiusRatio: 2, frictionFactor, length: 'without-length' } as const;

// Another author's formula beside it: Rennels and Hudson know no outlet length, and mean a long one.
// source: Miller Internal Flow Systems, problem 9.12, 90°, r/D 2, outlet of 30 diameters, as solved in an open library · read · 0.04
test('K 0.150', () => expectNear(roundedBend(bend), 0.15, 0.04));
