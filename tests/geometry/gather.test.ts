import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gather, gatherFound } from '../../src/geometry';

const lists = fc.array(fc.array(fc.oneof(fc.integer(), fc.array(fc.integer()), fc.constant(null))));

test('gathers what flatMap does', () => {
  fc.assert(
    fc.property(lists, (items) => {
      const marked = (list: unknown[], at: number) => list.map((item) => [at, item]);
      expect(gather(items, marked)).toEqual(items.flatMap(marked));
    }),
  );
});

test('gathers what is found, also zero, false and empty words, and leaves out what is not', () => {
  const found: (number | string | boolean | null | undefined)[] = [0, null, '', undefined, false, 1];
  expect(gatherFound(found, (item) => item)).toEqual([0, '', false, 1]);
  expect(gatherFound(['a', 'b', 'c'], (item, at) => (at === 1 ? null : `${at}${item}`))).toEqual(['0a', '2c']);
  expect(gatherFound([], () => 1)).toEqual([]);
});
