import { expect, test } from 'vitest';
import { findMutants } from './findMutants';
import { orderMutants } from './orderMutants';

const ONE = 'f(a < b, c + d, 3, 4, 5);\nf(g < h);\n';
const OTHER = 'f(a === b, c * d, true, 8);\n';

const order = (texts: Record<string, string>, seed: number): string[] => {
  const mutants = Object.entries(texts).flatMap(([file, text]) => findMutants(text, file));
  return orderMutants(mutants, (file) => texts[file] ?? '', seed).map(({ file, line, operator }) => `${file}:${line} ${operator}`);
};

test('a seed gives one order, another seed another', () => {
  const texts = { 'src/a/one.ts': ONE, 'src/a/other.ts': OTHER };
  expect(order(texts, 11)).toEqual(order(texts, 11));
  expect(order(texts, 12)).not.toEqual(order(texts, 11));
  expect(order(texts, 12).sort()).toEqual(order(texts, 11).sort());
});

test('the order is no order of files', () => {
  const files = order({ 'src/a/one.ts': ONE, 'src/a/other.ts': OTHER }, 11).map((words) => words.split(':')[0] ?? '');
  expect(files).not.toEqual([...files].sort((a, b) => (a < b ? -1 : 1)));
});

test('a change in one file leaves the order of the others', () => {
  const before = order({ 'src/a/one.ts': ONE, 'src/a/other.ts': OTHER }, 11).filter((words) => words.includes('other'));
  const after = order({ 'src/a/one.ts': `\n\n${ONE}f(9);`, 'src/a/other.ts': OTHER }, 11).filter((words) => words.includes('other'));
  expect(after).toEqual(before);
});
