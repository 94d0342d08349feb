import { describe, test } from 'vitest';
import { humidityRatioOfRelative, risingHumidity, STANDARD_DENSITY, STANDARD_PRESSURE, vapourFlow } from '../../src/topics/air';
import { airViscosity, DUCT_ROUGHNESS, equivalentDiameter, type SectionLoss, sectionLoss } from '../../src/topics/duct';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;
const FOOT = 0.3048;

/** 100 ft of round duct in standard air. */
function hundredFeet(cfm: number, inches: number): SectionLoss {
  const diameterM = inches * INCH;
  const loss = sectionLoss({
    airflowM3s: toSI(cfm, 'cfm'),
    diameterM,
    areaM2: (Math.PI / 4) * diameterM ** 2,
    lengthM: 100 * FOOT,
    roughnessM: 0.0003 * FOOT,
    coefficient: 0,
    densityKgM3: STANDARD_DENSITY,
    viscosityPas: valueOf(airViscosity({ temperatureC: toSI(70, 'F') })),
    method: 'colebrook',
  });
  return valueOf(loss);
}

const friction = (cfm: number, inches: number) => fromSI(hundredFeet(cfm, inches).totalPa, 'inH2O');
const velocity = (cfm: number, inches: number) => fromSI(hundredFeet(cfm, inches).velocityMs, 'fpm');

describe('round duct', () => {
  // source: Engineering ToolBox, equivalent diameter of ducts, in. wg to 100 ft with 0.0003 ft · read · 13 %
  test.each([
    [80, 4.9, 0.15],
    [200, 7.1, 0.14],
    [400, 9.1, 0.15],
    [1000, 12.9, 0.15],
    [200, 4.9, 0.88],
    [500, 7.1, 0.78],
    [1000, 9.1, 0.79],
    [2500, 12.9, 0.8],
    [10_000, 21.9, 0.83],
  ])('%d cfm in %d in: %d in. wg', (cfm, inches, printed) => expectNear(friction(cfm, inches), printed, '13 %'));

  // source: Engineering ToolBox, equivalent diameter of ducts, velocity column · read · 2.5 %
  test.each([
    [80, 4.9, 611],
    [200, 7.1, 732],
    [400, 9.1, 884],
    [1000, 12.9, 1104],
    [200, 4.9, 1527],
    [500, 7.1, 1819],
    [1000, 9.1, 2166],
    [2500, 12.9, 2712],
    [10_000, 21.9, 3858],
  ])('%d cfm in %d in: %d fpm', (cfm, inches, printed) => expectNear(velocity(cfm, inches), printed, '2.5 %'));

  // source: Engineering ToolBox, readings of the duct chart, in. wg to 100 ft · read · 15 %, 7 %
  test.each([
    [4000, 20, 0.23, '15 %'],
    [100_000, 60, 0.4, '7 %'],
  ] as const)('%d cfm in %d in: %d in. wg off the chart', (cfm, inches, printed, tolerance) => {
    expectNear(friction(cfm, inches), printed, tolerance);
  });

  // source: Engineering ToolBox, readings of the duct chart, velocity · read · 2 %
  test.each([
    [4000, 20, 1850],
    [100_000, 60, 5000],
  ])('%d cfm in %d in: %d fpm off the chart', (cfm, inches, printed) => expectNear(velocity(cfm, inches), printed, '2 %'));

  // regression: airflow at 0.100 in. wg to 100 ft, 0.0003 ft · computed · 0.5 %
  test.each([
    [4, 37.1, 425],
    [5, 67.8, 497],
    [6, 110.8, 564],
    [7, 167.7, 627],
    [8, 239.9, 687],
    [9, 328.8, 744],
    [10, 435.8, 799],
    [12, 708.8, 902],
    [14, 1068, 999],
    [16, 1524, 1091],
    [18, 2083, 1179],
    [20, 2754, 1262],
    [24, 4461, 1420],
  ])('%d in: %d cfm', (inches, cfm, fpm) => {
    expectNear(friction(cfm, inches), 0.1, '0.5 %');
    expectNear(velocity(cfm, inches), fpm, '0.2 %');
  });
});

describe('equivalent diameter', () => {
  // source: Engineering ToolBox, equivalent diameter of ducts · read · 0.05 in
  test.each([
    [4, 5, 4.9],
    [6, 6, 6.6],
    [8, 12, 10.7],
    [10, 10, 10.9],
    [10, 12, 12],
    [10, 14, 12.9],
    [12, 12, 13.1],
    [16, 20, 19.5],
    [20, 20, 21.9],
    [12, 36, 21.9],
  ])('%d × %d in: %d in', (a, b, printed) => {
    expectNear(valueOf(equivalentDiameter({ widthM: a * INCH, heightM: b * INCH })) / INCH, printed, 0.05);
  });
});

describe('build-up in a room', () => {
  // source: Engineering ToolBox, concentration in a room, table for a source of 1 and a volume of 1 · read · 5e-5
  test.each([
    [0.5, 10, 0.1599],
    [0.5, 20, 0.307],
    [0.5, 40, 0.5669],
    [0.5, 80, 0.9732],
    [1, 10, 0.1535],
    [1, 20, 0.2835],
    [1, 40, 0.4866],
    [1, 80, 0.7364],
    [1, 160, 0.9305],
    [2, 10, 0.1417],
    [2, 20, 0.2433],
    [2, 40, 0.3682],
    [2, 80, 0.4653],
    [4, 10, 0.1216],
    [4, 20, 0.1841],
    [4, 40, 0.2326],
    [4, 80, 0.2488],
    [8, 10, 0.0921],
    [8, 20, 0.1163],
    [8, 40, 0.1244],
    [8, 80, 0.125],
  ])('%d changes an hour, %d min: %d', (changesPerHour, minutes, printed) => {
    // Vapour as what is given off, a tenth of it an hour, into 100 m³ of air of 1 kg/m³: a thousandth of the table.
    const air = { airflowM3s: (changesPerHour * 100) / 3600, densityKgM3: 1, supplyRatio: 0, firstRatio: 0, volumeM3: 100 };
    const ratio = valueOf(risingHumidity({ ...air, vapourKgS: 0.1 / 3600, seconds: minutes * 60 }));
    expectNear(1000 * ratio, printed, 5e-5);
  });
});

describe('moist air', () => {
  // source: Engineering ToolBox, properties of saturated air, two figures · read · 4 %
  test.each([
    [20, 0.015],
    [30, 0.027],
    [40, 0.049],
    [50, 0.087],
    [60, 0.15],
  ])('%d °C: %d kg/kg', (temperatureC, printed) => {
    expectNear(humidityRatioOfRelative({ temperatureC, relativeHumidity: 1, pressurePa: STANDARD_PRESSURE }), printed, '4 %');
  });

  // source: Engineering ToolBox, latent heat of 10,000 m³/h · read · 0.05 kW
  test('16.5 kW', () => {
    const vapourKgS = valueOf(vapourFlow({ latentW: 16_500, vapourJkg: 2_465_560 }));
    expectNear(vapourKgS, toSI(10_000, 'm3/h') * 1.202 * (0.0057 - 0.0037), 50 / 2_465_560);
  });
});

// source: Engineering ToolBox, roughness of galvanized steel, 0.15 mm, as of the old chart · read · 2 %
test('galvanized by the old chart', () => {
  expectNear(DUCT_ROUGHNESS.find(({ id }) => id === 'galvanized-old-chart')?.roughnessM ?? 0, 0.15e-3, '2 %');
});
