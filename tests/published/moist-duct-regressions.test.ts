import { describe, test } from 'vitest';
import { innerSurface, measureMoistAirOfRelative, moistDensity, rValue, STANDARD_DENSITY } from '../../src/topics/air';
import { airViscosity, solveOperatingPoint } from '../../src/topics/duct';
import {
  exhaustByArea,
  exhaustByCapture,
  exhaustByFace,
  exhaustByLength,
  olderExhaustByArea,
  olderExhaustByPerimeter,
} from '../../src/topics/hood';
import { fromSI, toSI } from '../../src/units';
import { ductLoss } from '../support/ductLoss';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// No published answers: whole cases of this project's own, kept unchanged.

const INCH = 0.0254;
const FOOT = 0.3048;
const PRESSURE = toSI(14.696, 'psi');
const viscosityPas = valueOf(airViscosity({ temperatureC: toSI(70, 'F') }));
const airOf = (fahrenheit: number, relativeHumidity: number) =>
  valueOf(measureMoistAirOfRelative({ temperatureC: toSI(fahrenheit, 'F'), relativeHumidity, pressurePa: PRESSURE }));

describe('a dish-room run of 500 cfm, 25 ft of 10 in', () => {
  const run = valueOf(
    ductLoss({
      airflowM3s: toSI(500, 'cfm'),
      densityKgM3: STANDARD_DENSITY,
      viscosityPas,
      method: 'colebrook',
      sections: [
        {
          shape: { kind: 'round', diameterM: 10 * INCH },
          lengthM: 25 * FOOT,
          roughnessM: 0.0003 * FOOT,
          coefficients: [0.49, 0.15, 0.15, 1],
        },
      ],
    }),
  );
  const [section] = run.sections;

  // regression: from the same cases with inch-pound constants · computed · 0.5 %
  test.each([
    ['velocity, fpm', fromSI(section?.velocityMs ?? 0, 'fpm'), 916.73],
    ['Re', section?.reynolds ?? 0, 78_472],
    ['f', section?.frictionFactor ?? 0, 0.020481],
    ['velocity pressure', fromSI(section?.velocityPressurePa ?? 0, 'inH2O'), 0.052394],
    ['straight', fromSI(run.straightPa, 'inH2O'), 0.03219],
    ['fittings', fromSI(run.fittingsPa, 'inH2O'), 0.09378],
    ['total', fromSI(run.totalPa, 'inH2O'), 0.126],
  ])('%s', (_name, computed, expected) => expectNear(computed, expected, '0.5 %'));
});

// regression: density of dry air over that of 70 °F · computed · 0.001
test.each([
  [100, 0.946],
  [120, 0.914],
  [140, 0.883],
])('%d °F: %d', (fahrenheit, expected) => {
  const dry = (f: number) => valueOf(moistDensity({ temperatureC: toSI(f, 'F'), humidityRatio: 0, pressurePa: PRESSURE }));
  expectNear(dry(fahrenheit) / dry(70), expected, 0.001);
});

// memory: chart correction for warm air, [530/(T + 460)]^0.825, its exponents from memory · memory · 2 %
test.each([
  [100, 0.9556],
  [120, 0.9284],
  [140, 0.9027],
])('friction at %d °F is %d of that at 70 °F', (fahrenheit, expected) => {
  const loss = (f: number) => {
    const densityKgM3 = valueOf(moistDensity({ temperatureC: toSI(f, 'F'), humidityRatio: 0, pressurePa: PRESSURE }));
    const air = { densityKgM3, viscosityPas: valueOf(airViscosity({ temperatureC: toSI(f, 'F') })) };
    const section = { shape: { kind: 'round', diameterM: 10 * INCH }, lengthM: 10, roughnessM: 0.0003 * FOOT, coefficients: [] } as const;
    return valueOf(ductLoss({ airflowM3s: toSI(600, 'cfm'), ...air, method: 'colebrook', sections: [section] })).totalPa;
  };
  expectNear(loss(fahrenheit) / loss(70), expected, '2 %');
});

describe('a fan on a system', () => {
  const thousand = toSI(1000, 'cfm');
  const curve = Array.from({ length: 21 }, (_, i) => ({ airflowM3s: (i / 20) * thousand, pressurePa: toSI(1 - (i / 20) ** 2, 'inH2O') }));
  const point = valueOf(solveOperatingPoint(curve, toSI(3, 'inH2O') / thousand ** 2));

  // regression: fan 1.0 − (Q/1000)², system 3 (Q/1000)² · computed · 1e-9
  test.each([
    ['cfm', fromSI(point.airflowM3s, 'cfm'), 500],
    ['in. wg', fromSI(point.pressurePa, 'inH2O'), 0.75],
  ])('%s', (_name, computed, expected) => expectNear(computed, expected, 1e-9 * expected));
});

describe('states of air', () => {
  // regression: from PsychroLib in inch-pound units · computed · 0.05 %, 0.02 °F
  test.each([
    [75, 0.5, 0.00923567, 55.12],
    [80, 0.6, 0.0131554, 64.876],
    [85, 0.6, 0.0155237, 69.562],
    [82, 0.6, 0.0140608, 66.75],
  ])('%d °F and %d', (fahrenheit, humidity, ratio, dew) => {
    expectNear(airOf(fahrenheit, humidity).humidityRatio, ratio, '0.05 %');
    expectNear(fromSI(airOf(fahrenheit, humidity).dewPointC, 'F'), dew, 0.02);
  });

  // regression: wet bulbs from PsychroLib · computed · 0.02 °F
  test.each([
    [75, 0.5, 62.55],
    [82, 0.6, 71.38],
  ])('%d °F and %d: wet bulb %d °F', (fahrenheit, humidity, wet) => {
    expectNear(fromSI(airOf(fahrenheit, humidity).wetBulbC, 'F'), wet, 0.02);
  });
});

describe('condensation in an exhaust duct', () => {
  const bare = (insideF: number, outsideF: number, wall = 0) =>
    fromSI(
      valueOf(
        innerSurface({
          insideC: toSI(insideF, 'F'),
          outsideC: toSI(outsideF, 'F'),
          insideR: rValue(0.2),
          wallR: rValue(wall),
          outsideR: rValue(0.68),
        }),
      ),
      'F',
    );

  // regression: inner wall of the case above · computed · 0.01 °F
  test.each([
    [110, 40, 0, 94.09],
    [110, 40, 4.2, 107.24],
    [95, 40, 0, 82.5],
    [95, 75, 0, 90.45],
  ])('%d °F in %d °F behind R-%d: %d °F', (inside, outside, wall, expected) => expectNear(bare(inside, outside, wall), expected, 0.01));
});

describe('a hood of 4 × 4 ft that stands free, 3 ft above its source', () => {
  const [areaM2, openPerimeterM, heightM] = [toSI(16, 'ft2'), 16 * FOOT, 3 * FOOT];

  // regression: the rules side by side · computed · exact
  test.each([
    ['length', exhaustByLength({ lengthM: 4 * FOOT }), 400],
    ['face', exhaustByFace({ areaM2 }), 800],
    ['area-least', exhaustByArea({ areaM2, rate: 'least' }), 800],
    ['area-most', exhaustByArea({ areaM2, rate: 'most' }), 1600],
    ['older-area', olderExhaustByArea({ areaM2, openSides: '4' }), 1200],
    ['older-perimeter', olderExhaustByPerimeter({ openPerimeterM, heightM }), 2400],
    ['capture', exhaustByCapture({ openPerimeterM, heightM, captureMs: toSI(50, 'fpm') }), 3360],
  ])('%s', (_rule, computed, expected) => expectNear(fromSI(valueOf(computed), 'cfm'), expected, 1e-9 * expected));
});
