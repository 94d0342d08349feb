import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interpolate } from '../../../../src/rules/support/interpolate';
import { type FanPoint, scaleFanCurve, solveOperatingPoint, systemCoefficient, systemPressure } from '../../../../src/topics/duct';
import { expectNear } from '../../../support/expectNear';
import { valueOf } from '../../../support/valueOf';

const CURVE: FanPoint[] = [
  { airflowM3s: 0, pressurePa: 300 },
  { airflowM3s: 0.1, pressurePa: 290 },
  { airflowM3s: 0.2, pressurePa: 250 },
  { airflowM3s: 0.3, pressurePa: 160 },
  { airflowM3s: 0.4, pressurePa: 0 },
];
const POINTS = CURVE.map(({ airflowM3s, pressurePa }) => [airflowM3s, pressurePa] as const);
const coefficient = fc.double({ min: 0, max: 7, noNaN: true }).map((power) => 10 ** power);

describe('operating point, on seeded systems', () => {
  test('lies on both curves', () => {
    fc.assert(
      fc.property(coefficient, (systemK) => {
        const { airflowM3s, pressurePa, crossings } = valueOf(solveOperatingPoint(CURVE, systemK));
        expectNear(interpolate(POINTS, airflowM3s), pressurePa, 1e-6);
        expectNear(systemPressure({ systemK, airflowM3s }), pressurePa, 1e-6);
        expect(crossings).toBe(1);
      }),
      { seed: 3321, numRuns: 400 },
    );
  });

  test('a tighter system takes less air', () => {
    fc.assert(
      fc.property(coefficient, fc.double({ min: 1.01, max: 5, noNaN: true }), (systemK, by) => {
        const at = (k: number) => valueOf(solveOperatingPoint(CURVE, k)).airflowM3s;
        expect(at(systemK * by)).toBeLessThan(at(systemK));
      }),
      { seed: 3322, numRuns: 300 },
    );
  });

  test('moves with the speed as the fan laws say: the system stays the same', () => {
    fc.assert(
      fc.property(coefficient, fc.double({ min: 0.5, max: 1.5, noNaN: true }), (systemK, speedRatio) => {
        const one = valueOf(solveOperatingPoint(CURVE, systemK));
        const other = valueOf(solveOperatingPoint(scaleFanCurve(CURVE, { speedRatio, densityRatio: 1 }), systemK));
        expectNear(other.airflowM3s, one.airflowM3s * speedRatio, '1e-6 %');
        expectNear(other.pressurePa, one.pressurePa * speedRatio ** 2, '1e-6 %');
      }),
      { seed: 3323, numRuns: 200 },
    );
  });

  test('warm air: fan and system lose alike, and the airflow stays', () => {
    const warm = scaleFanCurve(CURVE, { speedRatio: 1, densityRatio: 0.9 });
    expectNear(valueOf(solveOperatingPoint(warm, 0.9 * 2000)).airflowM3s, valueOf(solveOperatingPoint(CURVE, 2000)).airflowM3s, '1e-9 %');
  });

  test('a finer curve comes to the answer of algebra from below', () => {
    const parabola = (steps: number) =>
      Array.from({ length: steps + 1 }, (_, i) => ({ airflowM3s: i / steps, pressurePa: 1 - (i / steps) ** 2 }));
    const at = (steps: number) => valueOf(solveOperatingPoint(parabola(steps), 2)).airflowM3s;
    const exact = Math.sqrt(1 / 3);
    expect(at(5)).toBeLessThan(at(50));
    expect(at(50)).toBeLessThanOrEqual(exact);
    expectNear(at(2000), exact, 1e-6);
  });

  test('no system at all: the fan runs free at the end of its curve', () => {
    expect(valueOf(solveOperatingPoint(CURVE, 0))).toEqual({ airflowM3s: expect.closeTo(0.4, 12), pressurePa: 0, crossings: 1 });
  });
});

describe('where there is no answer', () => {
  const stub = [
    { airflowM3s: 0.1, pressurePa: 290 },
    { airflowM3s: 0.2, pressurePa: 250 },
  ];

  test.each([
    ['a system freer than the curve', stub, 10, { code: 'system-too-free' }],
    ['a system tighter than the curve', stub, 1e6, { code: 'system-too-tight' }],
    ['one point', stub.slice(0, 1), 10, { code: 'fan-curve-too-short', params: { points: 1 } }],
    ['airflow that falls', stub.toReversed(), 10, { code: 'fan-curve-out-of-order', params: { point: 2 } }],
    ['suction', [...stub, { airflowM3s: 0.3, pressurePa: -1 }], 10, { code: 'fan-curve-out-of-order', params: { point: 3 } }],
    [
      'a point that is none',
      [...stub, { airflowM3s: Number.NaN, pressurePa: 1 }],
      10,
      { code: 'fan-curve-out-of-order', params: { point: 3 } },
    ],
    ['a system that is none', stub, Number.NaN, { code: 'below-least', input: 'systemK', value: 'NaN', min: 0 }],
    ['a system that helps', stub, -1, { code: 'below-least', input: 'systemK', value: -1, min: 0 }],
  ])('%s', (_name, curve, systemK, refusal) => {
    expect(solveOperatingPoint(curve, systemK)).toMatchObject({ ok: false, refusal });
  });
});

test('a curve with a hump: the meeting of most air is given, and all are counted', () => {
  const hump = [
    { airflowM3s: 0.05, pressurePa: 200 },
    { airflowM3s: 0.1, pressurePa: 100 },
    { airflowM3s: 0.2, pressurePa: 600 },
    { airflowM3s: 0.3, pressurePa: 0 },
  ];
  const point = valueOf(solveOperatingPoint(hump, 12_000));
  expect(point.crossings).toBe(3);
  expect(point.airflowM3s).toBeGreaterThan(0.2);
});

test('a system coefficient gives its pressure back', () => {
  const systemK = valueOf(systemCoefficient({ pressurePa: 125, airflowM3s: 0.236 }));
  expectNear(systemPressure({ systemK, airflowM3s: 0.236 }), 125, 1e-9);
});
