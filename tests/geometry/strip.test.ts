import { describe, expect, test } from 'vitest';
import { area, intersectionArea, isConvex, type Point, rotate, strip } from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';

const [TO_LEFT, TO_RIGHT] = [273, 489];

/** A path of two legs of 1500 that turns clockwise by so many degrees. */
const turned = (deg: number): Point[] => {
  const leg = rotate({ x: 1500, y: 0 }, deg);
  return [
    { x: 0, y: 0 },
    { x: 1500, y: 0 },
    { x: 1500 + leg.x, y: leg.y },
  ];
};

// The mitre takes d² · tan(turn/2) from the inner side and gives as much, of the outer depth, to the outer.
describe.each([0, 1, 15, 45, 90, 120, 135, -1, -30, -90, -135])('a strip that turns by %d°', (deg) => {
  test.each(MOTIONS)('$name', ({ move, isMirror }) => {
    const path = turned(deg).map(move);
    const { pieces, outline, left, right } = strip(path, TO_LEFT, TO_RIGHT);
    const [first = [], second = []] = pieces;
    const tangent = Math.tan((Math.abs(deg) * Math.PI) / 360);
    const isRightTurn = isMirror ? deg < 0 : deg > 0;
    const [inner, outer] = isRightTurn ? [TO_RIGHT, TO_LEFT] : [TO_LEFT, TO_RIGHT];
    expect(area(first) + area(second)).toBeCloseTo(2 * 1500 * (TO_LEFT + TO_RIGHT) + tangent * (outer ** 2 - inner ** 2), 2);
    expect(area(outline)).toBeCloseTo(area(first) + area(second), 2);
    expect(pieces.every(isConvex)).toBe(true);
    expect(intersectionArea(first, second)).toBeLessThan(1e-3);
    expect([first[1], first[2]]).toEqual([second[0], second[3]]);
    expect([left.length, right.length]).toEqual([3, 3]);
  });
});

test.each(MOTIONS)('a leg shorter than its mitres leaves a triangle: $name', ({ move }) => {
  // A hairpin to the right: legs of 1000, 200 and 1000; 300 to the inside need 600 between the long ones.
  const path = points([0, 0], [1000, 0], [1000, 200], [0, 200]).map(move);
  for (const [toLeft, toRight] of [
    [100, 300],
    [300, 100],
  ] as const) {
    const { pieces } = strip(path, toLeft, toRight);
    expect(pieces.every(isConvex)).toBe(true);
    const [first = [], middle = [], last = []] = pieces;
    expect(intersectionArea(first, middle)).toBeLessThan(1e-3);
    expect(intersectionArea(middle, last)).toBeLessThan(1e-3);
  }
});

test('the triangle of a hairpin, by hand', () => {
  // Both mitres run at 45° from the outer corners (1100, −100) and (1100, 300) and meet at (900, 100).
  const { pieces } = strip(points([0, 0], [1000, 0], [1000, 200], [0, 200]), 100, 300);
  expect(pieces[1]).toEqual(points([1100, -100], [1100, 300], [900, 100]));
});
