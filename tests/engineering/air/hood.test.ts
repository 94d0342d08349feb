import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AIR_LIMITS, EXHAUST_RULES, type HoodShape, hoodExhaust, netExhaust, waivedHoodExhaust } from '../../../src/engineering';
import { valueOf } from '../../support/valueOf';

const side = fc.double({ min: 0.6, max: 3, noNaN: true });

/** A canopy that stands free. */
const canopy = (lengthM: number, depthM: number): HoodShape => ({
  lengthM,
  areaM2: lengthM * depthM,
  openPerimeterM: 2 * (lengthM + depthM),
  openSides: '4',
  heightM: 0.9,
  captureMs: 0.254,
});

describe('hood exhaust, on seeded canopies', () => {
  test('each rule says its source, edition and confidence, in one order', () => {
    const rows = valueOf(hoodExhaust(canopy(1.2, 1.2)));
    expect(rows.map(({ rule }) => rule)).toEqual([...EXHAUST_RULES]);
    for (const row of rows) expect([row.title, row.edition, row.source.text].every((text) => text.length > 3)).toBe(true);
  });

  test('a longer hood asks more of every rule', () => {
    fc.assert(
      fc.property(side, side, fc.double({ min: 1.01, max: 2, noNaN: true }), (length, depth, by) => {
        const [small, large] = [valueOf(hoodExhaust(canopy(length, depth))), valueOf(hoodExhaust(canopy(length * by, depth)))];
        small.forEach((row, i) => expect(large[i]?.airflowM3s).toBeGreaterThan(row.airflowM3s));
      }),
      { seed: 3351, numRuns: 200 },
    );
  });

  test('a hood that no rule knows is refused, and the rule is named', () => {
    expect(hoodExhaust({ ...canopy(1.2, 1.2), heightM: 3 })).toEqual({ ok: false, reason: expect.stringContaining('heightM') });
    expect(hoodExhaust({ ...canopy(1.2, 1.2), lengthM: 0 })).toEqual({ ok: false, reason: expect.stringMatching(/^length: lengthM/) });
  });
});

test('more blown into a hood than it takes is refused', () => {
  expect(netExhaust({ totalM3s: 0.1, intoCavityM3s: 0.2 })).toEqual({ ok: false, reason: expect.stringContaining('no more') });
});

test('without a hood the room’s floor counts, or its appliances where they count more', () => {
  const at = (floorM2: number, appliances: number) => valueOf(waivedHoodExhaust({ floorM2, appliances }));
  expect(at(20, 0)).toBeCloseTo(at(20, 2), 12);
  expect(at(20, 3)).toBeGreaterThan(at(20, 2));
  expect(at(5, 1)).toBeCloseTo(at(9.290304, 0), 12);
});

test('limits have ids of their own, a bound and a source', () => {
  expect(new Set(AIR_LIMITS.map(({ id }) => id)).size).toBe(AIR_LIMITS.length);
  for (const limit of AIR_LIMITS) {
    expect(limit.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(limit.min !== null || limit.max !== null).toBe(true);
    expect(limit.source.length).toBeGreaterThan(0);
  }
});
