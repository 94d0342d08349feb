import { describe, test } from 'vitest';
import {
  atmosphericPressure,
  humidityRatio,
  humidityRatioOfRelative,
  humidityRatioOfWetBulb,
  measureMoistAir,
  moistDensity,
  moistEnthalpy,
  moistVolume,
  saturationPressure,
  temperatureOfEnthalpy,
  vapourPressure,
  wetBulb,
} from '../../src/topics/air';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// Values of the Handbook's chapter 1 as the tests of PsychroLib assert them, with the tolerances stated there.

const SEA_LEVEL = 101_325;
const AT_500_M = 95_461;
const saturated = (temperatureC: number) => valueOf(humidityRatioOfRelative({ temperatureC, relativeHumidity: 1, pressurePa: SEA_LEVEL }));
const saturatedHeat = (temperatureC: number) => moistEnthalpy({ temperatureC, humidityRatio: saturated(temperatureC) });

describe('saturated vapour', () => {
  // source: ASHRAE Fundamentals 2017, ch. 1, Table 3, psi, as asserted in PsychroLib · read · 0.03 %
  test.each([
    [23, 0.058268],
    [41, 0.12656],
    [77, 0.45973],
    [122, 1.7914],
    [212, 14.7094],
    [300, 67.0206],
  ])('%d °F: %d psi', (fahrenheit, printed) => {
    expectNear(fromSI(valueOf(saturationPressure({ temperatureC: toSI(fahrenheit, 'F') })), 'psi'), printed, '0.03 %');
  });

  // source: ASHRAE Fundamentals 2017, ch. 1, Table 3, Pa, as asserted in PsychroLib · read · 0.03 %
  test.each([
    [-20, 103.24],
    [-5, 401.74],
    [5, 872.6],
    [25, 3169.7],
    [50, 12_351.3],
    [100, 101_418],
    [150, 476_101.4],
  ])('%d °C: %d Pa', (temperatureC, printed) => expectNear(saturationPressure({ temperatureC }), printed, '0.03 %'));
});

describe('saturated air', () => {
  // source: ASHRAE Fundamentals 2017, ch. 1, Table 2, humidity ratio, as asserted in PsychroLib · read · 0.5 to 2 %
  test.each([
    [-20, 0.0006373, '1 %'],
    [-5, 0.0024863, '0.5 %'],
    [5, 0.005425, '0.5 %'],
    [25, 0.020173, '0.5 %'],
    [50, 0.086863, '1 %'],
    [85, 0.838105, '2 %'],
  ] as const)('%d °C: %d', (temperatureC, printed, tolerance) => expectNear(saturated(temperatureC), printed, tolerance));

  // source: ASHRAE Fundamentals 2017, ch. 1, Table 2, enthalpy, as asserted in PsychroLib · read · 1 to 3 %
  test.each([
    [-20, -18_542, '1 %'],
    [-5, 1164, '3 %'],
    [5, 18_639, '1 %'],
    [25, 76_504, '1 %'],
    [50, 275_353, '1 %'],
    [85, 2_307_539, '1 %'],
  ] as const)('%d °C: %d J/kg', (temperatureC, printed, tolerance) => expectNear(saturatedHeat(temperatureC), printed, tolerance));

  // memory: ASHRAE Fundamentals 2017, ch. 1, Table 2 at 60, 100 and 140 °F, unchecked · memory · 1 %
  test.each([
    [60, 0.01109],
    [100, 0.0432],
    [140, 0.1534],
  ])('%d °F: %d', (fahrenheit, printed) => expectNear(saturated(toSI(fahrenheit, 'F')), printed, '1 %'));
});

describe('moist air', () => {
  // source: PsychroLib tests in inch-pound units, 14.175 psi, whose constants are rounded otherwise · read · 0.05 %
  test.each([
    ['W of vapour', humidityRatio({ vapourPa: toSI(0.45973, 'psi'), pressurePa: toSI(14.175, 'psi') }), 0.0208473311024865],
    ['W of wet bulb', humidityRatioOfWetBulb({ temperatureC: 30, wetBulbC: 25, pressurePa: toSI(14.175, 'psi') }), 0.0187193288418892],
    [
      'volume, ft³/lb',
      valueOf(moistVolume({ temperatureC: 30, humidityRatio: 0.02, pressurePa: toSI(14.175, 'psi') })) / (toSI(1, 'ft3') / toSI(1, 'lb')),
      14.7205749002918,
    ],
    [
      'density, lb/ft³',
      valueOf(moistDensity({ temperatureC: 30, humidityRatio: 0.02, pressurePa: toSI(14.175, 'psi') })) / (toSI(1, 'lb') / toSI(1, 'ft3')),
      0.0692907720594378,
    ],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, '0.05 %'));

  // source: PsychroLib tests in SI units, 95461 Pa · read · 0.03 %
  test.each([
    ['W of vapour', humidityRatio({ vapourPa: 3169.7, pressurePa: AT_500_M }), 0.0213603998047487],
    ['vapour of W', vapourPressure({ humidityRatio: 0.0213603998047487, pressurePa: AT_500_M }), 3169.7],
    ['W of wet bulb', humidityRatioOfWetBulb({ temperatureC: 30, wetBulbC: 25, pressurePa: AT_500_M }), 0.0192281274241096],
    ['W of wet bulb over ice', humidityRatioOfWetBulb({ temperatureC: -1, wetBulbC: -5, pressurePa: AT_500_M }), 0.00120399819933844],
    ['enthalpy', moistEnthalpy({ temperatureC: 30, humidityRatio: 0.02 }), 81_316],
    ['enthalpy of dry air', moistEnthalpy({ temperatureC: 25, humidityRatio: 0 }), 25_148],
    ['temperature of enthalpy', temperatureOfEnthalpy({ enthalpyJkg: 81_316, humidityRatio: 0.02 }), 30],
    ['volume', moistVolume({ temperatureC: 30, humidityRatio: 0.02, pressurePa: AT_500_M }), 0.940855374352943],
    ['density', moistDensity({ temperatureC: 30, humidityRatio: 0.02, pressurePa: AT_500_M }), 1.08411986348219],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, '0.03 %'));

  // source: PsychroLib tests in SI units, wet bulb turned about · read · 0.005 °C
  test.each([
    ['above freezing', wetBulb({ temperatureC: 30, humidityRatio: 0.0192281274241096, pressurePa: AT_500_M }), 25],
    ['below freezing', wetBulb({ temperatureC: -1, humidityRatio: 0.00120399819933844, pressurePa: AT_500_M }), -5],
  ])('%s', (_name, computed, printed) => expectNear(computed, printed, 0.005));
});

describe('example 1 of chapter 1', () => {
  const air = (temperatureC: number, wetBulbC: number, pressurePa: number) => {
    const humidity = valueOf(humidityRatioOfWetBulb({ temperatureC, wetBulbC, pressurePa }));
    const state = { temperatureC, humidityRatio: humidity, pressurePa };
    return { ...valueOf(measureMoistAir(state)), volume: valueOf(moistVolume(state)) };
  };
  const ip = air(toSI(100, 'F'), toSI(65, 'F'), toSI(14.696, 'psi'));
  const si = air(40, 20, SEA_LEVEL);

  // The enthalpy of inch-pound units counts from 0 °F, that of SI from 0 °C.
  const ipHeat = 0.24 * 100 + ip.humidityRatio * (1061 + 0.444 * 100);

  // source: ASHRAE Fundamentals 2017, ch. 1, example 1 in inch-pound units, as asserted in PsychroLib · read · as stated
  test.each([
    ['W', ip.humidityRatio, 0.00523, 0.001],
    ['dew point, °F', fromSI(ip.dewPointC, 'F'), 40, 1],
    ['relative humidity', ip.relativeHumidity, 0.13, 0.01],
    ['enthalpy, Btu/lb', ipHeat, 29.8, 0.1],
    ['volume, ft³/lb', ip.volume / (toSI(1, 'ft3') / toSI(1, 'lb')), 14.22, '1 %'],
  ] as const)('100 °F and 65 °F: %s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));

  // source: ASHRAE Fundamentals 2017, ch. 1, example 1 in SI, as asserted in PsychroLib · read · as stated
  test.each([
    ['W', si.humidityRatio, 0.0065, 1e-4],
    ['dew point', si.dewPointC, 7, 0.5],
    ['relative humidity', si.relativeHumidity, 0.14, 0.01],
    ['enthalpy', si.enthalpyJkg, 56_700, 100],
    ['volume', si.volume, 0.896, '1 %'],
  ] as const)('40 °C and 20 °C: %s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));
});

// source: ASHRAE Fundamentals 2017, ch. 1, Table 1, Pa, as asserted in PsychroLib · read · 1 Pa
test.each([
  [-500, 107_478],
  [0, 101_325],
  [500, 95_461],
  [1000, 89_875],
  [4000, 61_640],
  [10_000, 26_436],
])('%d m: %d Pa', (altitudeM, printed) => expectNear(atmosphericPressure({ altitudeM }), printed, 1));

// source: ASHRAE Fundamentals 2017, ch. 1, Table 1, psi · read · 0.003 psi
test.each([
  [0, 14.696],
  [1000, 14.175],
  [3000, 13.173],
  [10_000, 10.108],
])('%d ft: %d psi', (feet, printed) =>
  expectNear(fromSI(valueOf(atmosphericPressure({ altitudeM: feet * 0.3048 })), 'psi'), printed, 0.003),
);
