import { describe, expect, test } from 'vitest';
import { refusalSentence } from '../../../../src/text';
import { BEND_RULES, bendFactor } from '../../../../src/topics/duct/formulas/bendFactor';
import { elbowCount, equivalentLength } from '../../../../src/topics/duct/formulas/equivalentLength';

const factor = (angleDeg: number, rule: (typeof BEND_RULES)[number]) => {
  const outcome = bendFactor({ angleDeg, rule });
  if (!outcome.ok) throw new Error(refusalSentence(outcome.refusal));
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

  // Common practice: each elbow counts whole. A run that falls ¼ in to a foot (1.19°) is laid with elbows of 90° and 45° all the same.
  test.each([
    ['elbows of 90° in a run that falls', [88.81, 88.81, 87.62], 3],
    ['elbows of 45° in one', [43.81, 43.81], 1.2],
    ['more than square is no less than its own', [91.19], 91.19 / 90],
    ['far from any elbow by its own angle', [75], 0.89],
  ])('counts %s', (_name, bendsDeg, elbows) => {
    const count = elbowCount(bendsDeg, 'stricter');
    expect(count.ok && count.value).toBeCloseTo(elbows, 3);
  });

  test('never falls as a bend grows sharper', () => {
    const counts = Array.from({ length: 1801 }, (_, i) => elbowCount([i / 10], 'stricter')).map((count) => (count.ok ? count.value : -1));
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
  });

  test('refuses a bend that is none', () => {
    expect(equivalentLength({ ...run, bendsDeg: [90, 181] }).ok).toBe(false);
    expect(elbowCount([-1], 'stricter').ok).toBe(false);
  });
});
