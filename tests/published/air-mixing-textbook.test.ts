import { describe, test } from 'vitest';
import { measureMoistAirOfRelative, mixAir, relativeHumidity } from '../../src/topics/air';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const BAR = 100_000;
const AIRFLOW = 20 / 60;
const stream = (temperatureC: number, humidity: number) => ({
  ...valueOf(measureMoistAirOfRelative({ temperatureC, relativeHumidity: humidity, pressurePa: BAR })),
  airflowM3s: AIRFLOW,
});
const cold = stream(5, 0.9);
const warm = stream(25, 0.5);
const mixed = valueOf(mixAir(cold, warm));
/** Vapour that a stream carries, g/s. */
const vapour = ({ densityKgM3, humidityRatio }: typeof cold) => (1000 * AIRFLOW * densityKgM3 * humidityRatio) / (1 + humidityRatio);

describe('20 m³/min of 5 °C and 90 % with 20 m³/min of 25 °C and 50 % at 1 bar', () => {
  // source: Textbook answer on adiabatic mixing, as quoted in a physics forum · read · one of the last figure
  test.each([
    ['density of the cold stream', cold.densityKgM3, 1.249, 0.001],
    ['density of the warm stream', warm.densityKgM3, 1.162, 0.001],
    ['vapour of the cold stream, g/s', vapour(cold), 2, 0.05],
    ['vapour of the warm stream, g/s', vapour(warm), 3.8, 0.05],
    ['W of the mixture', mixed.humidityRatio, 7.36e-3, 1.5e-5],
  ])('%s', (_name, computed, printed, tolerance) => expectNear(computed, printed, tolerance));

  // regression: the mixture's temperature and relative humidity · computed · 0.05 °C, 0.2 %
  test.each([
    ['temperature', mixed.temperatureC, 14.66, 0.01],
    ['relative humidity', relativeHumidity({ ...mixed, pressurePa: BAR }), 0.702, 0.002],
  ])('%s', (_name, computed, expected, tolerance) => expectNear(computed, expected, tolerance));
});
