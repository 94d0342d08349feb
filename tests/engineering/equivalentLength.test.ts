import { describe, expect, test } from 'vitest';
import { BEND_RULES, bendFactor, elbowCount, equivalentLength } from '../../src/engineering';

const factor = (angleDeg: number, rule: (typeof BEND_RULES)[number]) => {
  const outcome = bendFactor({ angleDeg, rule });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.value;
};

describe('bend factor', () => {
  test.each([0, 1, 15, 29.9, 30, 45, 59, 60, 75, 90, 91, 135, 180])(
    'at %s° the stricter is the larger of the two and never falls with the angle',
    (angle) => {
      const stricter = factor(angle, 'stricter');
      expect(stricter).toBe(Math.max(factor(angle, 'k-table'), factor(angle, 'proportional')));
      for (const rule of BEND_RULES) expect(factor(angle, rule)).toBeGreaterThanOrEqual(factor(Math.max(0, angle - 0.1), rule));
    },
  );

  test.each(BEND_RULES)('%s: straight on counts for nothing, a right angle for one elbow', (rule) => {
    expect(factor(0, rule)).toBe(0);
    expect(factor(90, rule)).toBe(1);
  });
});

describe('equivalent length', () => {
  const run = { straightM: 10, elbowM: 3, rule: 'stricter' as const };

  test('does not depend on the order of the bends', () => {
    expect(equivalentLength({ ...run, bendsDeg: [90, 45, 30] })).toEqual(equivalentLength({ ...run, bendsDeg: [30, 90, 45] }));
  });

  test('is the straight length where nothing bends', () => {
    expect(equivalentLength({ ...run, bendsDeg: [] })).toEqual({ ok: true, value: 10 });
  });

  test('counts elbows: two right angles and one of 45° by the table are 2.6', () => {
    const count = elbowCount([90, 90, 45], 'stricter');
    expect(count.ok && count.value).toBeCloseTo(2.6, 12);
  });

  test('refuses a bend that is none', () => {
    expect(equivalentLength({ ...run, bendsDeg: [90, 181] }).ok).toBe(false);
    expect(elbowCount([-1], 'stricter').ok).toBe(false);
  });
});
