import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { STANDARD_DENSITY } from '../../src/topics/air';
import { airViscosity, DUCT_FRICTION, DUCT_SLOPE, DUCT_VELOCITY, sectionLoss, VAPOUR_VELOCITY } from '../../src/topics/duct';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: Air Conditioning and Mechanical Ventilation System, vol. 1, p. 5-34, dishwasher exhaust ducts (least and most inferred) · secondary · exact
test.each([
  [1499, 'low'],
  [1500, 'pass'],
  [2200, 'pass'],
  [2201, 'high'],
])('%d fpm: %s', (fpm, judgement) => expect(judge(DUCT_VELOCITY, toSI(fpm, 'fpm'))).toBe(judgement));

// source: Air Conditioning and Mechanical Ventilation System, vol. 1, p. 5-34, at most 0.15 in. wg to 100 ft · secondary · exact
test.each([
  [0.15, 'pass'],
  [0.151, 'high'],
])('%d in. wg to 100 ft: %s', (inches, judgement) => expect(judge(DUCT_FRICTION, toSI(inches, 'inH2O') / 30.48)).toBe(judgement));

/** Friction of a metre of galvanized duct in standard air at the least velocity of the row. */
function leastFriction(inches: number): number {
  const [diameterM, velocityMs] = [inches * 0.0254, toSI(1500, 'fpm')];
  const areaM2 = (Math.PI / 4) * diameterM ** 2;
  const air = { densityKgM3: STANDARD_DENSITY, viscosityPas: valueOf(airViscosity({ temperatureC: 21 })) };
  const duct = { diameterM, areaM2, lengthM: 1, roughnessM: 0.0003 * 0.3048, coefficient: 0 };
  return valueOf(sectionLoss({ ...air, ...duct, airflowM3s: velocityMs * areaM2, method: 'colebrook' })).straightPa;
}

// source: the same row's velocity and friction together: a narrow duct cannot keep both · computed · exact
test.each([
  [7, 'high'],
  [12, 'high'],
  [20, 'pass'],
])('%d in at 1500 fpm: %s', (inches, judgement) => expect(judge(DUCT_FRICTION, leastFriction(inches))).toBe(judgement));

// source: ASHRAE Pocket Guide (2013), Table 2.9, smoke, vapours and light fumes, as reported · secondary · exact
test.each([
  [999, 'low'],
  [1000, 'pass'],
  [2000, 'pass'],
  [2001, 'high'],
])('%d fpm for vapour: %s', (fpm, judgement) => expect(judge(VAPOUR_VELOCITY, toSI(fpm, 'fpm'))).toBe(judgement));

// memory: usual slope of a moist duct, 1/4 in to a foot · memory · exact
test.each([
  [0.25, 'pass'],
  [0.24, 'low'],
])('%d in to a foot: %s', (inches, judgement) => expect(judge(DUCT_SLOPE, inches / 12)).toBe(judgement));
