import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { findMutants } from './findMutants';
import { markReached } from './markReached';

/** Plain JavaScript, so that it can be run as it stands. */
const SOURCE = `
function judge(a, most) {
  if (a > most && a !== 7) return most * 2;
  for (const step of [1, 2]) { a += step; }
  return a < 4 ? Math.max(a, 0) + 1 : -a;
}
`;
const MUTANTS = findMutants(SOURCE, 'src/toy/toy.ts').map((mutant, number) => ({ mutant, number }));
const MARKED = markReached(SOURCE, MUTANTS);

const reach = (a: number, most: number): { value: unknown; operators: string[] } => {
  const reached = new Set<number>();
  const value: unknown = runInNewContext(`${MARKED}; judge(${a}, ${most})`, { reachedMutants: reached });
  const lines = MUTANTS.filter(({ number }) => reached.has(number)).map(({ mutant }) => `${mutant.line} ${mutant.operator}`);
  return { value, operators: lines.sort() };
};

test.each([
  [9, 5],
  [7, 5],
  [0, 5],
  [-3, 5],
])('the marks change no answer: %d, %d', (a, most) => {
  expect(reach(a, most).value).toBe(runInNewContext(`${SOURCE}; judge(${a}, ${most})`));
});

test('what runs is marked, and what does not is not', () => {
  expect(reach(9, 5).operators).toEqual(
    [
      '3 && → ||',
      '3 !== → ===',
      '3 * → /',
      '3 2 → 3',
      '3 7 → 8',
      '3 > → >=',
      '3 condition negated',
      '3 early return removed',
      '2 block emptied',
    ].sort(),
  );
  expect(reach(0, 5).operators).not.toContain('3 * → /');
  expect(reach(0, 5).operators).toContain('5 Math.max → Math.min');
  expect(reach(9, 20).operators).not.toContain('5 Math.max → Math.min');
});

test('without a list to fill the marks do nothing', () => {
  expect(runInNewContext(`${MARKED}; judge(9, 5)`)).toBe(10);
});
