import { expect, test } from 'vitest';
import { createPinch } from '../../../src/app/stage/createPinch';

const at = (x: number, y: number) => ({ x, y });

test.each([
  {
    name: 'apart',
    before: [at(100, 100), at(200, 100)],
    after: [at(50, 100), at(250, 100)],
    gives: { factor: 2, dx: 0, dy: 0, x: 150, y: 100 },
  },
  { name: 'together', before: [at(0, 0), at(0, 80)], after: [at(0, 20), at(0, 60)], gives: { factor: 0.5, dx: 0, dy: 0, x: 0, y: 40 } },
  {
    name: 'side by side',
    before: [at(0, 0), at(30, 40)],
    after: [at(12, -8), at(42, 32)],
    gives: { factor: 1, dx: 12, dy: -8, x: 27, y: 12 },
  },
  {
    name: 'one of them',
    before: [at(0, 0), at(100, 0)],
    after: [at(0, 0), at(150, 0)],
    gives: { factor: 1.5, dx: 25, dy: 0, x: 75, y: 0 },
  },
  { name: 'from one place', before: [at(5, 5), at(5, 5)], after: [at(5, 5), at(9, 5)], gives: { factor: 1, dx: 2, dy: 0, x: 7, y: 5 } },
  {
    name: 'and a third, which counts for nothing',
    before: [at(0, 0), at(100, 0), at(7, 7)],
    after: [at(0, 0), at(100, 0), at(90, 7)],
    gives: { factor: 1, dx: 0, dy: 0, x: 50, y: 0 },
  },
])('two fingers: $name', ({ before, after, gives: { factor, dx, dy, x, y } }) => {
  expect(createPinch(before, after)).toEqual({ type: 'pinch', screen: at(x, y), factor, dx, dy });
});
