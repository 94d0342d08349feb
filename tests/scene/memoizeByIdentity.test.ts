import { expect, test, vi } from 'vitest';
import { memoizeByIdentity } from '../../src/scene';

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
