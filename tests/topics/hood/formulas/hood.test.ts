import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exhaustByArea, exhaustByCapture, exhaustByFace, exhaustByLength } from '../../../../src/topics/hood/formulas/exhaustRules';
import { netExhaust } from '../../../../src/topics/hood/formulas/netExhaust';
import { olderExhaustByArea, olderExhaustByPerimeter } from '../../../../src/topics/hood/formulas/olderRule';
import { EXHAUST_RULES, type ExhaustRule } from '../../../../src/topics/hood/formulas/support/hoodExhaust';
import { waivedHoodExhaust } from '../../../../src/topics/hood/formulas/waivedHood';
import { groupOf, LIMITS } from '../../../../src/topics/registry';
import { valueOf } from '../../../support/valueOf';

const side = fc.double({ min: 0.6, max: 3, noNaN: true });

/** A canopy that stands free, by each rule. */
const exhausts = (lengthM: number, depthM: number, heightM = 0.9) => {
  const areaM2 = lengthM * depthM;
  const openPerimeterM = 2 * (lengthM + depthM);
  return {
    length: exhaustByLength({ lengthM }),
    face: exhaustByFace({ areaM2 }),
    'area-least': exhaustByArea({ areaM2, rate: 'least' }),
    'area-most': exhaustByArea({ areaM2, rate: 'most' }),
    'older-area': olderExhaustByArea({ areaM2, openSides: '4' }),
    'older-perimeter': olderExhaustByPerimeter({ openPerimeterM, heightM }),
    capture: exhaustByCapture({ openPerimeterM, heightM, captureMs: 0.254 }),
  } satisfies Record<ExhaustRule, unknown>;
};

describe('hood exhaust, on seeded canopies', () => {
  test('a longer hood asks more of every rule', () => {
    fc.assert(
      fc.property(side, side, fc.double({ min: 1.01, max: 2, noNaN: true }), (length, depth, by) => {
        const [small, large] = [exhausts(length, depth), exhausts(length * by, depth)];
        for (const rule of EXHAUST_RULES) expect(valueOf(large[rule])).toBeGreaterThan(valueOf(small[rule]));
      }),
      { seed: 3351, numRuns: 200 },
    );
  });

  test('a hood that no rule knows is refused', () => {
    expect(exhausts(1.2, 1.2, 3).capture).toMatchObject({ ok: false, refusal: { code: 'out-of-range', input: 'heightM', value: 3 } });
    expect(exhausts(0, 1.2).length).toMatchObject({ ok: false, refusal: { code: 'out-of-range', input: 'lengthM', value: 0 } });
  });
});

test('more blown into a hood than it takes is refused', () => {
  expect(netExhaust({ totalM3s: 0.1, intoCavityM3s: 0.2 })).toMatchObject({
    ok: false,
    refusal: { code: 'blown-exceeds-taken', params: { intoCavityM3s: 0.2, totalM3s: 0.1 } },
  });
});

test('without a hood the room’s floor counts, or its appliances where they count more', () => {
  const at = (floorM2: number, appliances: number) => valueOf(waivedHoodExhaust({ floorM2, appliances }));
  expect(at(20, 0)).toBeCloseTo(at(20, 2), 12);
  expect(at(20, 3)).toBeGreaterThan(at(20, 2));
  expect(at(5, 1)).toBeCloseTo(at(9.290304, 0), 12);
});

test('limits have ids of their own, a bound and a source', () => {
  const limits = LIMITS.filter((one) => groupOf(one) === 'air');
  expect(new Set(limits.map(({ id }) => id)).size).toBe(limits.length);
  for (const limit of limits) {
    expect(limit.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(limit.min !== null || limit.max !== null).toBe(true);
    expect(limit.source.length).toBeGreaterThan(0);
  }
});
