import { describe, test } from 'vitest';
import { STANDARD_DENSITY } from '../../src/topics/air';
import { fittingLoss, sectionLoss } from '../../src/topics/duct';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const area = (inches: number) => (Math.PI / 4) * (inches * 0.0254) ** 2;
const speed = (cfm: number, inches: number) => toSI(cfm, 'cfm') / area(inches);
/** Of standard air in a duct of a foot. */
const pressure = (velocityMs: number) => {
  const air = { densityKgM3: STANDARD_DENSITY, viscosityPas: 1.81e-5, method: 'colebrook' } as const;
  const duct = { diameterM: 0.3048, areaM2: area(12), lengthM: 1, roughnessM: 0.0001, coefficient: 0 };
  return valueOf(sectionLoss({ ...air, ...duct, airflowM3s: velocityMs * duct.areaM2 })).velocityPressurePa;
};
const narrow = speed(390, 4);

describe('390 cfm', () => {
  // source: Velocity-pressure sheet, worked column · read · 0.5 %
  test.each([
    ['area of 4 in, ft²', fromSI(area(4), 'ft2'), 0.087],
    ['velocity in 4 in, fpm', fromSI(narrow, 'fpm'), 4467],
    ['velocity pressure in 4 in, in. wg', fromSI(pressure(narrow), 'inH2O'), 1.24],
    ['velocity in 4.5 in, fpm', fromSI(speed(390, 4.5), 'fpm'), 3532],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, '0.5 %'));

  // source: Velocity-pressure sheet, entry of 0.65 and the velocity itself · read · 0.5 %
  test('entry of 2.046 in. wg', () => {
    expectNear(fromSI(valueOf(fittingLoss({ coefficient: 1.65, velocityPressurePa: pressure(narrow) })), 'inH2O'), 2.046, '0.5 %');
  });

  // source: Velocity-pressure sheet, one figure in print · read · 0.05
  test('4.5 in: 0.8 in. wg', () => expectNear(fromSI(pressure(speed(390, 4.5)), 'inH2O'), 0.8, 0.05));
});

// source: Velocity-pressure sheet and the ABIH examination's equations, (V/4005)² at 0.075 lb/ft³ · read · 0.2 %
test('4005 fpm have 1 in. wg', () => expectNear(fromSI(pressure(toSI(4005, 'fpm')), 'inH2O'), 1, '0.2 %'));
