import { test } from 'vitest';
import { colebrook, frictionLoss, reynolds } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const pipe = { velocityMs: 0.2 / ((Math.PI / 4) * 0.2 ** 2), diameterM: 0.2, densityKgM3: 900 };
const number = valueOf(reynolds({ ...pipe, viscosityPas: 1e-5 * 900 }));
const frictionFactor = valueOf(colebrook({ reynolds: number, relativeRoughness: 0.26 / 200 }));
const head = valueOf(frictionLoss({ ...pipe, frictionFactor, lengthM: 500 })) / (900 * 9.80665);

// source: Kudela lecture on hydraulics, oil of 1e-5 m²/s, 0.2 m³/s, 500 m of 200 mm, 0.26 mm, as worked in an open package · read · 1 m
test('head loss of 117 m', () => expectNear(head, 117, 1));

// regression: its Reynolds number and friction factor · computed · 1e-4
test.each([
  ['Re', number, 127_324],
  ['f', frictionFactor, 0.02272],
])('%s', (_name, computed, expected) => expectNear(computed, expected, expected * 2e-4));
