import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { createLinePlan, createPlan, LINE_CONFIGURATIONS, planSchema, transformPlan } from '../../src/plan';

const CASES = FAMILIES.flatMap((family) =>
  LINE_CONFIGURATIONS.flatMap((configuration) =>
    (['left-to-right', 'right-to-left'] as const).map((hand) => ({ family: family.id, configuration, hand })),
  ),
);

describe('createPlan', () => {
  it('is valid', () => expect(planSchema.parse(createPlan())).toEqual(createPlan()));

  it('has a room of whole feet', () => {
    const { outline, ceilingHeight, openings } = createPlan().room;
    const lengths = [...outline.flatMap(({ x, y }) => [x, y]), ceilingHeight ?? 0, ...openings.flatMap(({ from, width }) => [from, width])];
    expect(lengths.filter((length) => (length / 304.8) % 1 !== 0)).toEqual([]);
  });
});

describe('createLinePlan', () => {
  it.each(CASES)('$family $configuration $hand is valid at every rotation', (options) => {
    for (const rotationDeg of [0, 37.5, 90, 180, 270, -45]) {
      const plan = createLinePlan({ ...options, rotationDeg });
      expect(planSchema.safeParse(plan).error).toBeUndefined();
    }
  });

  it.each(CASES)('$family $configuration $hand mirrored twice is itself', (options) => {
    const plan = createLinePlan(options);
    const twice = transformPlan(transformPlan(plan, { mirror: true }), { mirror: true });
    expect(twice.sheets).toEqual([]);
    expect(twice.machines).toEqual(plan.machines);
    expect(twice.tables).toEqual(plan.tables);
    expect(twice.room.outline).toEqual(plan.room.outline);
  });
});
