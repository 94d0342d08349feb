import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Extent, followWater, profileHeightAt } from '../../../src/scene';
import { ROWS } from '../waterRows';

describe.each(ROWS)('$name', (row) => {
  test.each([0, -300])('deck moved up by %d', (lift) => {
    const water = followWater(
      row.profile.map(([s, z]) => ({ s, z: z + lift })),
      (row.sinks ?? []).map(([from, to]): Extent => ({ from, to })),
    );
    expect(water.stretches.map(({ from, to, runsTo }) => [from, to, runsTo])).toEqual(row.stretches.map(([f, t, , r]) => [f, t, r]));
    expectClose(
      water.stretches.map(({ slope }) => slope),
      row.stretches.map(([, , slope]) => slope),
    );
    expectClose(
      water.pools.flatMap(({ from, to, lowest, depth }) => [from, to, lowest, depth]),
      row.pools.flat(),
    );
    expect(water.leastSlope).toBeCloseTo(row.leastSlope, 9);
  });
});

/**
 * The pools a second time, by brute force: the profile is sampled, every sample is filled to the
 * end rim, and water runs over until nothing moves. Slow and plain, and nothing of it is shared.
 */
test('seeded: depths agree with a brute-force flood', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 840, max: 900 }), { minLength: 2, maxLength: 7 }), (heights) => {
      const profile = heights.map((z, i) => ({ s: i * STEP * SAMPLES, z }));
      const { pools } = followWater(profile, []);
      for (const [i, depth] of flood(heights).entries()) {
        const pool = pools.find(({ from, to }) => from <= i * STEP && i * STEP <= to);
        const z = profileHeightAt(profile, i * STEP) ?? NaN;
        const level = pool === undefined ? z : pool.depth + (profileHeightAt(profile, pool.lowest) ?? NaN);
        expect(Math.max(0, level - z)).toBeCloseTo(depth, 6);
      }
    }),
    { seed: 2, numRuns: 200 },
  );
});

const SAMPLES = 10;
const STEP = 20;

function flood(heights: number[]): number[] {
  const ground = heights.slice(1).flatMap((z, i) => Array.from({ length: SAMPLES }, (_, k) => mix(heights[i] ?? 0, z, k / SAMPLES)));
  ground.push(heights.at(-1) ?? 0);
  const level = ground.map(() => 1000);
  for (let moved = true; moved; ) {
    moved = false;
    for (const [i, z] of ground.entries()) {
      const left = i === 0 ? -Infinity : (level[i - 1] ?? 0);
      const right = i === ground.length - 1 ? z + 75 : (level[i + 1] ?? 0);
      const next = Math.max(z, Math.min(left, right, level[i] ?? 0));
      if (next < (level[i] ?? 0)) {
        level[i] = next;
        moved = true;
      }
    }
  }
  return level.map((z, i) => z - (ground[i] ?? 0));
}

const mix = (a: number, b: number, t: number) => a + (b - a) * t;

function expectClose(found: number[], expected: number[]) {
  expect(found).toHaveLength(expected.length);
  for (const [i, value] of expected.entries()) expect(found[i]).toBeCloseTo(value, 6);
}
