import { produce } from 'immer';
import { expect, test, vi } from 'vitest';
import { createListKeeper, createListMap, memoizeByIdentity } from '../../src/scene';

test('asks again only when an argument is another one', () => {
  const derive = vi.fn<(a: { n: number }, b: { n: number } | null, c: number) => { sum: number }>((a, b, c) => ({
    sum: a.n + (b?.n ?? 0) + c,
  }));
  const remembered = memoizeByIdentity(derive);
  const [a, b] = [{ n: 1 }, { n: 2 }];
  const answer = remembered(a, b, 3);
  expect(answer).toEqual({ sum: 6 });
  expect(remembered(a, b, 3)).toBe(answer);
  expect(derive).toHaveBeenCalledTimes(1);
  // The same content is not the same thing.
  expect(remembered({ n: 1 }, b, 3)).not.toBe(answer);
  expect(remembered(a, b, 3)).toBe(answer);
  expect(remembered(a, null, 3)).toEqual({ sum: 4 });
  expect(remembered(a, b, 4)).toEqual({ sum: 7 });
  expect(derive).toHaveBeenCalledTimes(4);
});

test('a list is mapped anew only where its members or the context are others', () => {
  const make = vi.fn((item: { n: number }, context: { times: number }) => ({ n: item.n * context.times }));
  const map = createListMap(make);
  const [a, b, c] = [{ n: 1 }, { n: 2 }, { n: 3 }];
  const [once, twice] = [{ times: 1 }, { times: 2 }];
  const made = map([a, b], once);
  expect(made).toEqual([{ n: 1 }, { n: 2 }]);
  const next = map([a, c, b], once);
  expect(next).toEqual([{ n: 1 }, { n: 3 }, { n: 2 }]);
  expect(next[0]).toBe(made[0]);
  expect(make).toHaveBeenCalledTimes(4);
  expect(map([a, c], twice)).toEqual([{ n: 2 }, { n: 6 }]);
  expect(map([], twice)).toEqual([]);
  expect(map([a], twice)).toEqual([{ n: 2 }]);
  expect(make).toHaveBeenCalledTimes(7);
});

test('a list that was a draft does no harm to the next', () => {
  const map = createListMap((item: { n: number }, _: null) => item.n);
  produce({ list: [{ n: 1 }, { n: 2 }] }, ({ list }) => {
    expect(map(list, null)).toEqual([1, 2]);
  });
  expect(map([{ n: 3 }, { n: 4 }], null)).toEqual([3, 4]);
});

test('a list with the same members keeps its identity', () => {
  const keep = createListKeeper<object>();
  const [a, b] = [{}, {}];
  const list = keep([a, b]);
  expect(keep([a, b])).toBe(list);
  expect(keep([b, a])).not.toBe(list);
  expect(keep([a])).toEqual([a]);
  expect(keep([a, b])).toBe(list);
  expect(keep([])).toEqual([]);
});
