import { test } from 'vitest';
import { colebrook, frictionLoss, reynolds } from '../../src/topics/duct';
import { toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const FOOT = 0.3048;
const diameterM = (8 / 12) * FOOT;
const pipe = { velocityMs: toSI(1500, 'gpm') / ((Math.PI / 4) * diameterM ** 2), diameterM, densityKgM3: 900 };
const number = valueOf(reynolds({ ...pipe, viscosityPas: 1.15e-4 * FOOT ** 2 * 900 }));
const frictionFactor = valueOf(colebrook({ reynolds: number, relativeRoughness: 8.5e-4 / (8 / 12) }));
const head = valueOf(frictionLoss({ ...pipe, frictionFactor, lengthM: 1600 * FOOT })) / (900 * 9.80665);

// source: Subramanian notes on pipe flow, 1,500 gpm of oil in 1,600 ft of 8 in pipe, as worked in an open package · read · 0.5 ft
test('head loss of 83.7 ft', () => expectNear(head / FOOT, 83.7, 0.5));
