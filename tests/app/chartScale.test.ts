import { expect, test } from 'vitest';
import { createScale } from '../../src/app/rail/pictures/chartScale';

test.each([
  { name: 'from 0 up to a round number', values: [37, 473], wanted: 4, from: 0, to: 600, ticks: [0, 200, 400, 600] },
  { name: 'a value on a tick ends the scale', values: [800], wanted: 4, from: 0, to: 800, ticks: [0, 200, 400, 600, 800] },
  { name: 'small numbers', values: [0.063], wanted: 3, from: 0, to: 0.1, ticks: [0, 0.05, 0.1] },
  { name: 'below 0', values: [-3, 7], wanted: 2, from: -5, to: 10, ticks: [-5, 0, 5, 10] },
])('$name', ({ values, wanted, from, to, ticks }) => expect(createScale(values, wanted)).toEqual({ from, to, ticks }));

test('need not begin at 0', () => expect(createScale([95, 176], 3, null)).toEqual({ from: 50, to: 200, ticks: [50, 100, 150, 200] }));

test('one value alone has a scale all the same', () => {
  const { from, to } = createScale([0], 4);
  expect(to).toBeGreaterThan(from);
});
