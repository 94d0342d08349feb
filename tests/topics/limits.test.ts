import { describe, expect, test } from 'vitest';
import { judge, narrow } from '../../src/rules';
import { LIMITS, RULES } from '../../src/topics/registry';

describe.each(LIMITS.map((limit) => [limit.id, limit] as const))('%s', (id, limit) => {
  test('has a kebab-case id, a title, a source and a bound', () => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(limit.title.trim()).not.toBe('');
    expect(limit.source.length).toBeGreaterThan(0);
    expect(limit.min === null && limit.max === null).toBe(false);
    expect((limit.min ?? Number.NEGATIVE_INFINITY) < (limit.max ?? Number.POSITIVE_INFINITY)).toBe(true);
  });

  test('passes at its bounds and not beyond', () => {
    const step = 1e-6 * Math.abs(limit.min ?? limit.max ?? 1);
    const bounds = [limit.min, limit.max].filter((bound) => bound !== null);
    expect(bounds.map((bound) => judge(limit, bound))).toEqual(bounds.map(() => 'pass'));
    expect(limit.min === null ? 'low' : judge(limit, limit.min - step)).toBe('low');
    expect(limit.max === null ? 'high' : judge(limit, limit.max + step)).toBe('high');
    expect(judge(limit, Number.NaN)).not.toBe('pass');
  });
});

test.each(RULES.map((rule) => [rule.id, rule] as const))('rule %s has a kebab-case id, its words and a source', (id, rule) => {
  expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect([rule.title, rule.rule].every((text) => text.trim() !== '')).toBe(true);
  expect(rule.source.length).toBeGreaterThan(0);
});

// The handbook's row stands in a public copy without the heads of its columns: never called read.
test.each(['duct-velocity', 'duct-friction', 'vapour-velocity'])('%s is restated', (id) => {
  expect(LIMITS.find((limit) => limit.id === id)?.source.map(({ confidence }) => confidence)).toEqual(['secondary']);
});

test('no two limits or rules share an id', () => {
  const ids = [...LIMITS, ...RULES].map(({ id }) => id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

describe('a band within two others', () => {
  test.each([
    [
      { min: 1, max: 5 },
      { min: 2, max: 9 },
      { min: 2, max: 5 },
    ],
    [
      { min: null, max: 5 },
      { min: 2, max: null },
      { min: 2, max: 5 },
    ],
    [
      { min: null, max: null },
      { min: null, max: 3 },
      { min: null, max: 3 },
    ],
  ])('case %#', (one, other, both) => {
    expect(narrow(one, other)).toEqual(both);
    expect(narrow(other, one)).toEqual(both);
  });

  test('two that do not meet leave nothing that passes', () => {
    const none = narrow({ min: 1, max: 2 }, { min: 3, max: 4 });
    expect([1.5, 2.5, 3.5].map((value) => judge(none, value))).not.toContain('pass');
  });
});
