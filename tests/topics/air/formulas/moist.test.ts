import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dewPoint } from '../../../../src/topics/air/formulas/dewPoint';
import { moistEnthalpy, temperatureOfEnthalpy } from '../../../../src/topics/air/formulas/enthalpy';
import {
  humidityRatio,
  humidityRatioOfRelative,
  relativeHumidity,
  vapourPressure,
} from '../../../../src/topics/air/formulas/humidityRatio';
import { saturationPressure } from '../../../../src/topics/air/formulas/saturationPressure';
import { mixAir } from '../../../../src/topics/air/formulas/support/mixAir';
import { measureMoistAir, measureMoistAirOfRelative } from '../../../../src/topics/air/formulas/support/moistAir';
import { humidityRatioOfWetBulb } from '../../../../src/topics/air/formulas/wetBulb';
import { expectNear } from '../../../support/expectNear';
import { valueOf } from '../../../support/valueOf';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const temperature = number(-20, 60);
const humidity = number(0.02, 1);
const pressure = number(70_000, 110_000);
const air = (temperatureC: number, relative: number, pressurePa: number) =>
  valueOf(measureMoistAirOfRelative({ temperatureC, relativeHumidity: relative, pressurePa }));

describe('moist air, on seeded states', () => {
  test('dew point ≤ wet bulb ≤ temperature, all three alike where air is saturated', () => {
    fc.assert(
      fc.property(number(1, 60), humidity, pressure, (t, relative, p) => {
        const { dewPointC, wetBulbC } = air(t, relative, p);
        expect(dewPointC).toBeLessThanOrEqual(wetBulbC + 1e-6);
        expect(wetBulbC).toBeLessThanOrEqual(t + 1e-6);
        const saturated = air(t, 1, p);
        expectNear(saturated.dewPointC, t, 1e-6);
        expectNear(saturated.wetBulbC, t, 1e-6);
      }),
      { seed: 3331, numRuns: 200 },
    );
  });

  test('goes there and back: humidity, vapour, dew point, enthalpy, wet bulb', () => {
    fc.assert(
      fc.property(number(1, 60), humidity, pressure, (t, relative, p) => {
        const state = air(t, relative, p);
        const vapourPa = valueOf(vapourPressure(state));
        expectNear(relativeHumidity(state), relative, 1e-9);
        expectNear(humidityRatio({ vapourPa, pressurePa: p }), state.humidityRatio, 1e-12);
        expectNear(saturationPressure({ temperatureC: valueOf(dewPoint({ vapourPa })) }), vapourPa, '1e-7 %');
        expectNear(temperatureOfEnthalpy({ enthalpyJkg: state.enthalpyJkg, humidityRatio: state.humidityRatio }), t, 1e-9);
        if (state.wetBulbC > 0.1)
          expectNear(humidityRatioOfWetBulb({ temperatureC: t, wetBulbC: state.wetBulbC, pressurePa: p }), state.humidityRatio, 1e-9);
      }),
      { seed: 3332, numRuns: 200 },
    );
  });

  test('more humidity: higher dew point, wet bulb and enthalpy, and lighter air', () => {
    fc.assert(
      fc.property(temperature, number(0.02, 0.9), pressure, number(1.02, 1.1), (t, relative, p, by) => {
        const [dry, moist] = [air(t, relative, p), air(t, relative * by, p)];
        expect(moist.dewPointC).toBeGreaterThan(dry.dewPointC);
        expect(moist.wetBulbC).toBeGreaterThanOrEqual(dry.wetBulbC);
        expect(moist.enthalpyJkg).toBeGreaterThan(dry.enthalpyJkg);
        expect(moist.densityKgM3).toBeLessThan(dry.densityKgM3);
      }),
      { seed: 3333, numRuns: 200 },
    );
  });

  test('saturated vapour rises with the temperature, through the triple point too', () => {
    const at = (temperatureC: number) => valueOf(saturationPressure({ temperatureC }));
    for (let t = -100; t < 200; t += 0.5) expect(at(t + 0.5)).toBeGreaterThan(at(t));
    expect(at(0.011)).toBeGreaterThan(at(0.009));
    expectNear(at(0.01), 611.7, 0.2);
  });
});

describe('mixing', () => {
  const stream = (t: number, relative: number, airflowM3s: number) => ({ ...air(t, relative, 101_325), airflowM3s });

  test('keeps vapour and heat, and lies between its streams', () => {
    fc.assert(
      fc.property(number(5, 40), number(0.1, 0.6), number(5, 40), number(0.1, 0.6), number(0.05, 0.95), (t1, r1, t2, r2, share) => {
        const [one, other] = [stream(t1, r1, share), stream(t2, r2, 1 - share)];
        const mixed = mixAir(one, other);
        if (!mixed.ok) return;
        const dry = (s: typeof one) => (s.airflowM3s * s.densityKgM3) / (1 + s.humidityRatio);
        const sum = (key: 'humidityRatio' | 'enthalpyJkg') => dry(one) * one[key] + dry(other) * other[key];
        expectNear(mixed.value.dryAirKgS, dry(one) + dry(other), 1e-9);
        expectNear(mixed.value.dryAirKgS * mixed.value.humidityRatio, sum('humidityRatio'), 1e-12);
        expectNear(mixed.value.dryAirKgS * valueOf(moistEnthalpy(mixed.value)), sum('enthalpyJkg'), 1e-6);
        expect(mixed.value.temperatureC).toBeGreaterThanOrEqual(Math.min(t1, t2) - 0.01);
        expect(mixed.value.temperatureC).toBeLessThanOrEqual(Math.max(t1, t2) + 0.01);
      }),
      { seed: 3334, numRuns: 300 },
    );
  });

  test('warm wet air in cold air is fog, and refused', () => {
    expect(mixAir(stream(40, 1, 0.5), stream(-10, 1, 0.5))).toMatchObject({
      ok: false,
      refusal: { code: 'above-saturation', formula: 'air-mixing' },
    });
  });

  test('nothing with nothing is refused', () => expect(mixAir(stream(20, 0.5, 0), stream(25, 0.5, 0)).ok).toBe(false));
});

describe('what is no air', () => {
  test.each([
    ['more vapour than saturates it', measureMoistAir({ temperatureC: 20, humidityRatio: 0.03, pressurePa: 101_325 })],
    ['dry air, which has no dew point', measureMoistAir({ temperatureC: 20, humidityRatio: 0, pressurePa: 101_325 })],
    ['air that boils', humidityRatioOfRelative({ temperatureC: 100, relativeHumidity: 1, pressurePa: 95_000 })],
    ['a wet bulb above the dry one', humidityRatioOfWetBulb({ temperatureC: 20, wetBulbC: 21, pressurePa: 101_325 })],
    ['a wet bulb drier than dry', humidityRatioOfWetBulb({ temperatureC: 60, wetBulbC: 5, pressurePa: 101_325 })],
    ['relative humidity above 1', humidityRatioOfRelative({ temperatureC: 20, relativeHumidity: 1.01, pressurePa: 101_325 })],
  ])('%s', (_name, outcome) => expect(outcome.ok).toBe(false));
});
