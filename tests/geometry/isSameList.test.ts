import { expect, test } from 'vitest';
import { isSameList } from '../../src/geometry';

const one = { size: 1 };
const two = { size: 2 };
const bySize = (a: { size: number }, b: { size: number }) => a.size === b.size;

test.each([
  { name: 'nothing', a: [], b: [], identity: true, size: true },
  { name: 'the same members', a: [one, two], b: [one, two], identity: true, size: true },
  { name: 'in another order', a: [one, two], b: [two, one], identity: false, size: false },
  { name: 'one more', a: [one], b: [one, two], identity: false, size: false },
  { name: 'another last', a: [one, two], b: [one, one], identity: false, size: false },
  { name: 'others of the same sizes', a: [one, two], b: [{ size: 1 }, { size: 2 }], identity: false, size: true },
])('lists that are the same: $name', ({ a, b, identity, size }) => {
  expect([isSameList(a, b), isSameList(a, b, bySize)]).toEqual([identity, size]);
});
