import { expect, test } from 'vitest';
import { formatResult, formatScores, formatSurvivors, isBelow } from './report';
import type { Outcome, Result } from './types';

const result = (file: string, start: number, outcome: Outcome, killer: string | null = null): Result => ({
  mutant: { file, line: start + 1, start, end: start + 1, replacement: '', operator: '< → <=', place: 'expression' },
  outcome,
  killer,
  seconds: 1.25,
});

const RESULTS = [
  result('src/b/one.ts', 8, 'survived'),
  result('src/b/one.ts', 2, 'unreached'),
  result('src/b/deep/two.ts', 1, 'killed', 'tests/b/two.test.ts'),
  result('src/b/deep/two.ts', 5, 'timeout', 'tests/b/two.test.ts'),
  result('src/a/three.ts', 1, 'killed', 'tests/a/three.test.ts'),
];

test('a line a mutant', () => {
  expect(RESULTS.slice(0, 3).map(formatResult)).toEqual([
    'src/b/one.ts:9 < → <= → survived (1.3 s)',
    'src/b/one.ts:3 < → <= → survived, no test runs it (1.3 s)',
    'src/b/deep/two.ts:2 < → <= → killed by tests/b/two.test.ts (1.3 s)',
  ]);
});

test('a score a folder, hangs among what was noticed', () => {
  expect(formatScores(RESULTS).split('\n')).toEqual([
    'src/a: 1 of 1 killed (100.0 %)',
    'src/b: 2 of 4 killed (50.0 %), 1 of them by a timeout',
    'all: 3 of 5 killed (60.0 %), 1 of them by a timeout',
  ]);
});

test('what survived, in the order of the sources', () => {
  expect(formatSurvivors(RESULTS).split('\n')).toEqual(['Survivors:', 'src/b/one.ts:3 < → <= (no test runs it)', 'src/b/one.ts:9 < → <=']);
  expect(formatSurvivors(RESULTS.slice(2))).toBe('None survived.');
});

test('the least is asked of each folder', () => {
  expect([50, 51].map((least) => isBelow(RESULTS, least))).toEqual([false, true]);
});
