import { expect, test } from 'vitest';
import { ruling } from '../../src/rules/ruling';
import { bisect } from '../../src/rules/support/bisect';
import { feet, inches } from '../../src/rules/support/lengths';
import { wayPlace } from '../../src/rules/support/places';
import { printedLeast, printedLength, printedMost } from '../../src/rules/support/printedLimit';
import { points } from '../support/motions';

test.each([
  { rising: (x: number) => x - 2, low: 0, high: 10, at: 2 },
  { rising: (x: number) => x - 5, low: 0, high: 10, at: 5 },
  { rising: (x: number) => x * x * x - 27, low: -300, high: 0, at: 0 },
  { rising: (x: number) => x * x * x - 27, low: 0, high: 300, at: 3 },
  { rising: () => 1, low: 4, high: 10, at: 4 },
])('a rising function reaches 0 at $at', ({ rising, low, high, at }) => expect(bisect(rising, low, high)).toBeCloseTo(at, 12));

test('inches and feet in metres', () => expect([inches(10), feet(10)]).toEqual([0.254, 3.048]));

// Whole °C and round lengths that a code prints beside: the milder of both counts for whoever works in metric.
test.each([
  { found: [printedLeast(82.2, 'us'), printedLeast(82.2, 'metric'), printedLeast(73.9, 'metric')], is: [82.2, 82, 73.9] },
  { found: [printedMost(4.4, 'us'), printedMost(4.6, 'metric'), printedMost(4.4, 'metric')], is: [4.4, 5, 4.4] },
  {
    found: [printedLength(152.4, 150, 'us'), printedLength(152.4, 150, 'metric'), printedLength(152.4, 155, 'metric')],
    is: [152.4, 150, 152.4],
  },
])('printed bounds: $is', ({ found, is }) => expect(found).toEqual(is));

test.each([
  {
    name: 'along a wall',
    way: points([0, 0], [100, 0]),
    place: { kind: 'area', polygons: [points([0, -10], [100, -10], [100, 10], [0, 10])] },
  },
  {
    name: 'up and then along it',
    way: points([0, 0], [0, 0], [100, 0]),
    place: { kind: 'area', polygons: [points([0, -10], [100, -10], [100, 10], [0, 10])] },
  },
  { name: 'only up', way: points([5, 7], [5, 7]), place: { kind: 'point', point: { x: 5, y: 7 } } },
  { name: 'nowhere', way: [], place: { kind: 'point', point: { x: 0, y: 0 } } },
])('the way of a pipe 20 wide: $name', ({ way, place }) => expect(wayPlace(way, 20)).toEqual(place));

test('a ruling passes when nothing stands against the case', () => {
  const refusal = { code: 'no-machine' } as never;
  expect(ruling(null)).toEqual({ pass: true });
  expect(ruling(refusal)).toEqual({ pass: false, refusal });
});
