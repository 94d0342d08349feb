import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STANDARD_DENSITY } from '../../../../src/topics/air/formulas/support/standardAir';
import { equivalentDiameter, mitredBend, roundedBend } from '../../../../src/topics/duct';
import { type DuctSection, ductLoss } from '../../../support/ductLoss';
import { expectNear } from '../../../support/expectNear';
import { valueOf } from '../../../support/valueOf';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = { densityKgM3: STANDARD_DENSITY, viscosityPas: 1.81e-5, method: 'colebrook' } as const;
const round = (diameterM: number, lengthM: number, coefficients: number[] = []): DuctSection => ({
  shape: { kind: 'round', diameterM },
  lengthM,
  roughnessM: 0.00015,
  coefficients,
});
const loss = (airflowM3s: number, ...sections: DuctSection[]) => valueOf(ductLoss({ ...air, airflowM3s, sections })).totalPa;

describe('loss of a run, on seeded ducts', () => {
  const flow = number(0.1, 0.5);
  const diameter = number(0.15, 0.5);

  test('rises with airflow, length and fittings, falls with the diameter', () => {
    fc.assert(
      fc.property(flow, diameter, number(1, 30), number(1.05, 1.9), (airflow, size, length, by) => {
        const base = loss(airflow, round(size, length, [1]));
        expect(loss(airflow * by, round(size, length, [1]))).toBeGreaterThan(base);
        expect(loss(airflow, round(size, length * by, [1]))).toBeGreaterThan(base);
        expect(loss(airflow, round(size, length, [by]))).toBeGreaterThan(base);
        expect(loss(airflow, round(size * by, length, [1]))).toBeLessThan(base);
      }),
      { seed: 3311, numRuns: 300 },
    );
  });

  test('does not depend on where a duct is cut or on the order of its parts', () => {
    fc.assert(
      fc.property(flow, diameter, number(1, 30), number(0, 1), (airflow, size, length, share) => {
        const whole = loss(airflow, round(size, length, [0.5, 1]));
        const cut = [round(size, length * share, [1]), round(size, length * (1 - share), [0.5])];
        expectNear(loss(airflow, ...cut), whole, '1e-9 %');
        expectNear(loss(airflow, ...cut.toReversed()), whole, '1e-9 %');
      }),
      { seed: 3312, numRuns: 200 },
    );
  });

  test('grows with a power of the airflow between 1.7 and 2: fittings alone with the square', () => {
    fc.assert(
      fc.property(number(0.1, 0.5), diameter, (airflow, size) => {
        const power = Math.log2(loss(airflow * 2, round(size, 10)) / loss(airflow, round(size, 10)));
        expect(power).toBeGreaterThan(1.7);
        expect(power).toBeLessThan(2);
        expectNear(loss(airflow * 2, round(size, 0, [1])), 4 * loss(airflow, round(size, 0, [1])), '1e-9 %');
      }),
      { seed: 3313, numRuns: 200 },
    );
  });

  test('a rectangular duct rubs as its round equal, and within 8 % of what its hydraulic diameter gives', () => {
    fc.assert(
      fc.property(flow, number(0.2, 0.5), number(0.4, 1), (airflow, widthM, flat) => {
        const heightM = widthM * flat;
        const shape = { kind: 'rectangular', widthM, heightM } as const;
        const rectangular = loss(airflow, { shape, lengthM: 10, roughnessM: 0.00015, coefficients: [] });
        const equal = valueOf(equivalentDiameter({ widthM, heightM }));
        expectNear(rectangular, loss(airflow, round(equal, 10)), '1e-9 %');
        const hydraulic = (2 * widthM * heightM) / (widthM + heightM);
        const sameVelocity = (airflow * ((Math.PI / 4) * hydraulic ** 2)) / (widthM * heightM);
        expectNear(rectangular, loss(sameVelocity, round(hydraulic, 10)), '8 %');
      }),
      { seed: 3314, numRuns: 200 },
    );
  });

  test.each([
    ['too fast', { airflowM3s: 5, sections: [round(0.1, 1)] }],
    ['neither laminar nor turbulent', { airflowM3s: 0.0094, sections: [round(0.25, 1)] }],
    ['too flat', { airflowM3s: 0.2, sections: [{ ...round(1, 1), shape: { kind: 'rectangular', widthM: 1, heightM: 0.1 } as const }] }],
    ['shorter than nothing', { airflowM3s: 0.2, sections: [round(0.25, -1)] }],
    ['no number', { airflowM3s: Number.NaN, sections: [round(0.25, 1)] }],
  ])('refuses what is %s', (_name, run) => expect(ductLoss({ ...air, ...run }).ok).toBe(false));

  test('no section, no loss', () => expect(loss(0.2)).toBe(0));
});

describe('equivalent diameter', () => {
  test('does not ask which side is which, lies between the sides and grows with each', () => {
    fc.assert(
      fc.property(number(0.2, 0.6), number(0.2, 0.6), (widthM, heightM) => {
        const equal = valueOf(equivalentDiameter({ widthM, heightM }));
        expectNear(equivalentDiameter({ widthM: heightM, heightM: widthM }), equal, '1e-9 %');
        expect(equal).toBeGreaterThan(Math.min(widthM, heightM));
        expect(equal).toBeLessThan(1.1 * Math.max(widthM, heightM));
        expect(valueOf(equivalentDiameter({ widthM: widthM * 1.1, heightM }))).toBeGreaterThan(equal);
      }),
      { seed: 3315, numRuns: 300 },
    );
  });
});

describe('fittings', () => {
  test('a bend costs nothing at 0°, more with its angle, less with its radius, and a mitre more than a bend', () => {
    const bend = (angleDeg: number, radiusRatio: number) =>
      valueOf(roundedBend({ angleDeg, radiusRatio, frictionFactor: 0.018, length: 'without-length' }));
    expect(bend(0, 1.5)).toBe(0);
    expect(valueOf(mitredBend({ angleDeg: 0 }))).toBe(0);
    for (const angle of [30, 45, 60, 90]) {
      expect(bend(angle, 1.5)).toBeGreaterThan(bend(angle - 5, 1.5));
      expect(bend(angle, 2.5)).toBeLessThan(bend(angle, 1.5));
      expect(valueOf(mitredBend({ angleDeg: angle }))).toBeGreaterThan(bend(angle, 1.5));
    }
  });
});
