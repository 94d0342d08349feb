import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  atmosphericPressure,
  dewPoint,
  humidityRatioOfRelative,
  humidityRatioOfWetBulb,
  measureMoistAirOfRelative,
  moistVolume,
  saturationPressure,
  vapourPressure,
} from '../../src/topics/air';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// PsychroLib, an independent library of the same Handbook's formulas, run beside ours.

const relative = (temperatureC: number, relativeHumidity: number, pressurePa: number) => ({ temperatureC, relativeHumidity, pressurePa });

// source: PsychroLib documentation, dew point of 25 °C and 80 % · read · 0.001 °C
test('dew point 21.3094 °C', () => expectNear(valueOf(measureMoistAirOfRelative(relative(25, 0.8, 101_325))).dewPointC, 21.3094, 1e-3));

// source: PsychroLib tests, wet bulb of 7 °C and 61 % at 100000 Pa · read · 0.1 %
test('wet bulb 3.92667 °C', () =>
  expectNear(valueOf(measureMoistAirOfRelative(relative(7, 0.61, 100_000))).wetBulbC, 3.92667433781955, '0.1 %'));

describe('saturated air at dish-room temperatures', () => {
  // regression: from PsychroLib in inch-pound units, whose rounded constants differ in the fifth figure · computed · 2e-4
  test.each([
    [60, 0.256345, 0.0110413, 13.3335],
    [70, 0.363277, 0.0157638, 13.6914],
    [80, 0.507354, 0.0222394, 14.0916],
    [90, 0.698888, 0.0310542, 14.5491],
    [100, 0.95031, 0.0429982, 15.0847],
    [110, 1.276436, 0.0591579, 15.7274],
    [120, 1.694735, 0.0810714, 16.5184],
    [140, 2.892597, 0.1524167, 18.8225],
    [160, 4.74679, 0.2967313, 23.0751],
  ])('%d °F', (fahrenheit, psi, ratio, volume) => {
    const temperatureC = toSI(fahrenheit, 'F');
    const pressurePa = toSI(14.696, 'psi');
    const humidityRatio = valueOf(humidityRatioOfRelative(relative(temperatureC, 1, pressurePa)));
    const metres = valueOf(moistVolume({ temperatureC, humidityRatio, pressurePa }));
    expectNear(fromSI(valueOf(saturationPressure({ temperatureC })), 'psi'), psi, '0.02 %');
    expectNear(humidityRatio, ratio, '0.02 %');
    expectNear(metres / (toSI(1, 'ft3') / toSI(1, 'lb')), volume, '0.02 %');
  });
});

describe('on seeded states, the library itself', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

  const state = fc.tuple(
    fc.double({ min: -30, max: 70, noNaN: true }),
    fc.double({ min: 0.05, max: 1, noNaN: true }),
    fc.double({ min: 70_000, max: 110_000, noNaN: true }),
  );

  // source: PsychroLib 2.5.0 in JavaScript, run beside ours on 300 states · read · 1e-9, dew point and wet bulb 0.002 °C
  test('agrees', () => {
    fc.assert(
      fc.property(state, ([temperatureC, relativeHumidity, pressurePa]) => {
        const air = valueOf(measureMoistAirOfRelative(relative(temperatureC, relativeHumidity, pressurePa)));
        const ratio = psychrolib.GetHumRatioFromRelHum(temperatureC, relativeHumidity, pressurePa);
        expectNear(saturationPressure({ temperatureC }), psychrolib.GetSatVapPres(temperatureC), '1e-7 %');
        expectNear(air.humidityRatio, ratio, '1e-7 %');
        expectNear(air.enthalpyJkg, psychrolib.GetMoistAirEnthalpy(temperatureC, ratio), 1e-3);
        expectNear(air.densityKgM3, psychrolib.GetMoistAirDensity(temperatureC, ratio, pressurePa), '1e-4 %');
        expectNear(air.dewPointC, psychrolib.GetTDewPointFromRelHum(temperatureC, relativeHumidity), 0.002);
        expectNear(air.wetBulbC, psychrolib.GetTWetBulbFromRelHum(temperatureC, relativeHumidity, pressurePa), 0.002);
      }),
      { seed: 3201, numRuns: 300 },
    );
  });

  // source: PsychroLib 2.5.0 in JavaScript, humidity ratio from wet bulb on 200 states · read · 1e-6
  test('agrees on wet bulbs', () => {
    fc.assert(
      fc.property(state, fc.double({ min: 0, max: 1, noNaN: true }), ([temperatureC, relativeHumidity, pressurePa], share) => {
        const air = valueOf(measureMoistAirOfRelative(relative(temperatureC, relativeHumidity, pressurePa)));
        const wetBulbC = air.wetBulbC + share * (temperatureC - air.wetBulbC);
        const ours = valueOf(humidityRatioOfWetBulb({ temperatureC, wetBulbC, pressurePa }));
        expectNear(ours, psychrolib.GetHumRatioFromTWetBulb(temperatureC, wetBulbC, pressurePa), '1e-4 %');
      }),
      { seed: 3202, numRuns: 200 },
    );
  });

  test('the atmosphere and the way back from a dew point', () => {
    for (const altitudeM of [-400, 0, 1234, 3000]) {
      expectNear(atmosphericPressure({ altitudeM }), psychrolib.GetStandardAtmPressure(altitudeM), 0.01);
    }
    for (const temperatureC of [-20, -0.5, 0, 0.005, 0.02, 5, 40, 90]) {
      const vapourPa = valueOf(saturationPressure({ temperatureC }));
      expect(valueOf(dewPoint({ vapourPa }))).toBeCloseTo(temperatureC, 9);
    }
    expectNear(vapourPressure({ humidityRatio: 0.02, pressurePa: 95_461 }), 2974, 2);
  });
});
