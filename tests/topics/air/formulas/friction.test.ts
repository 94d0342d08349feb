import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  altshulTsal,
  churchill,
  colebrook,
  FRICTION_METHODS,
  frictionFactor,
  haaland,
  LAMINAR_LIMIT,
  laminar,
  swameeJain,
} from '../../../../src/topics/duct';
import { expectNear } from '../../../support/expectNear';
import { valueOf } from '../../../support/valueOf';

const turbulent = fc.double({ min: Math.log10(5000), max: 8, noNaN: true }).map((power) => Math.min(1e8, Math.max(5000, 10 ** power)));
const rough = fc.double({ min: 1e-6, max: 0.05, noNaN: true });

describe('friction factor, on seeded flows', () => {
  test('Colebrook’s answer satisfies its own equation', () => {
    fc.assert(
      fc.property(turbulent, rough, (reynolds, relativeRoughness) => {
        const f = valueOf(colebrook({ reynolds, relativeRoughness }));
        const right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 / (reynolds * Math.sqrt(f)));
        expectNear(1 / Math.sqrt(f), right, '1e-9 %');
      }),
      { seed: 3301, numRuns: 500 },
    );
  });

  test.each([
    ['Haaland', haaland, '2.5 %'],
    ['Swamee and Jain', swameeJain, '4 %'],
    ['Churchill', churchill, '4 %'],
    ['Altshul and Tsal', altshulTsal, '30 %'],
  ] as const)('%s stays near Colebrook', (_name, form, tolerance) => {
    fc.assert(
      fc.property(turbulent, rough, (reynolds, relativeRoughness) => {
        expectNear(form({ reynolds, relativeRoughness }), valueOf(colebrook({ reynolds, relativeRoughness })), tolerance);
      }),
      { seed: 3302, numRuns: 500 },
    );
  });

  test.each([
    ['Colebrook', colebrook],
    ['Haaland', haaland],
    ['Swamee and Jain', swameeJain],
    ['Altshul and Tsal', altshulTsal],
  ] as const)('%s falls with the Reynolds number and rises with the roughness', (_name, form) => {
    fc.assert(
      fc.property(turbulent, rough, fc.double({ min: 1.01, max: 3, noNaN: true }), (reynolds, relativeRoughness, by) => {
        const f = valueOf(form({ reynolds, relativeRoughness }));
        expect(valueOf(form({ reynolds: Math.min(1e8, reynolds * by), relativeRoughness }))).toBeLessThanOrEqual(f);
        expect(valueOf(form({ reynolds, relativeRoughness: Math.min(0.05, relativeRoughness * by) }))).toBeGreaterThanOrEqual(f);
      }),
      { seed: 3303, numRuns: 300 },
    );
  });

  test('rough flow: the Reynolds number no longer counts', () => {
    const limit = (2 * Math.log10(3.7 / 0.01)) ** -2;
    expectNear(colebrook({ reynolds: 1e8, relativeRoughness: 0.01 }), limit, '0.1 %');
  });

  test('laminar flow: Churchill falls together with 64/Re', () => {
    for (const reynolds of [10, 100, 1000]) {
      expectNear(churchill({ reynolds, relativeRoughness: 0.001 }), valueOf(laminar({ reynolds })), '0.01 %');
    }
  });
});

describe('between laminar and turbulent', () => {
  test.each(FRICTION_METHODS)('%s', (method) => {
    const at = (reynolds: number) => frictionFactor({ reynolds, relativeRoughness: 1e-4, method });
    expect(at(LAMINAR_LIMIT).ok).toBe(true);
    expect(at(3000).ok).toBe(method === 'churchill');
    expect(at(6000).ok).toBe(true);
  });
});

test('in ducts as they are made, every form is within 5 % of Colebrook', () => {
  for (const reynolds of [2e4, 5e4, 1e5, 3e5]) {
    for (const relativeRoughness of [2e-4, 6e-4, 1.5e-3]) {
      for (const form of [haaland, swameeJain, altshulTsal, churchill]) {
        expectNear(form({ reynolds, relativeRoughness }), valueOf(colebrook({ reynolds, relativeRoughness })), '5 %');
      }
    }
  }
});
