import { expect, test } from 'vitest';
import { bendsOf, distance3, pointAt3 } from '../../src/geometry';

const at = (x: number, y: number, z: number) => ({ x, y, z });
/** 300 to the right, 400 down the paper, 500 up. */
const PATH = [at(0, 0, 0), at(300, 0, 0), at(300, 400, 0), at(300, 400, 500)];

test('a distance in space: 2, 3 and 6 make 7', () => {
  expect(distance3(at(1, 1, 1), at(3, 4, 7))).toBe(7);
  expect(distance3(at(3, 4, 7), at(1, 1, 1))).toBe(7);
});

test.each([
  [-50, at(0, 0, 0)],
  [0, at(0, 0, 0)],
  [150, at(150, 0, 0)],
  [300, at(300, 0, 0)],
  [301, at(300, 1, 0)],
  [700, at(300, 400, 0)],
  [1000, at(300, 400, 300)],
  [1200, at(300, 400, 500)],
  [1300, at(300, 400, 500)],
])('at %d along a path', (s, point) => expect(pointAt3(PATH, s)).toEqual(point));

test('a leg without length is passed over; a path of one point is that point, and one of none is refused', () => {
  expect(pointAt3([at(0, 0, 0), at(0, 0, 0), at(100, 0, 0)], 40)).toEqual(at(40, 0, 0));
  expect(pointAt3([at(0, 0, 0), at(0, 0, 0), at(100, 0, 0)], 0)).toEqual(at(0, 0, 0));
  expect(pointAt3([at(7, 8, 9)], 40)).toEqual(at(7, 8, 9));
  expect(() => pointAt3([], 0)).toThrow(RangeError);
});

test('bends: where along the path, in which place, by how much', () => {
  expect(bendsOf(PATH)).toEqual([
    { at: 300, point: at(300, 0, 0), angleDeg: 90 },
    { at: 700, point: at(300, 400, 0), angleDeg: 90 },
  ]);
  // Up first: the bend at the start is one as well.
  expect(bendsOf(PATH, at(0, 0, 1)).map((bend) => bend.at)).toEqual([0, 300, 700]);
  expect(bendsOf(PATH, at(1, 0, 0)).map((bend) => bend.at)).toEqual([300, 700]);
});

test.each([
  { name: 'straight back', to: at(0, 0, 0), angleDeg: 180 },
  { name: 'by 45°', to: at(200, 0, 100), angleDeg: 45 },
  { name: 'by 45° across', to: at(200, -100, 0), angleDeg: 45 },
  { name: 'by 135°', to: at(0, 100, 0), angleDeg: 135 },
  // tan 0.6° = 0.01047, tan 0.4° = 0.00698.
  { name: 'by 0.6°', to: at(200, 0, 1.047), angleDeg: 0.6 },
  { name: 'by 0.4°: no bend', to: at(200, 0, 0.698), angleDeg: null },
])('a bend $name', ({ to, angleDeg }) => {
  const [bend] = bendsOf([at(0, 0, 0), at(100, 0, 0), to]);
  expect(bend ? Math.round(bend.angleDeg * 1000) / 1000 : null).toBe(angleDeg);
});

test('a leg of a single millimetre has bends at both its ends', () => {
  expect(bendsOf([at(0, 0, 0), at(100, 0, 0), at(100, 1, 0), at(200, 1, 0)])).toEqual([
    { at: 100, point: at(100, 0, 0), angleDeg: 90 },
    { at: 101, point: at(100, 1, 0), angleDeg: 90 },
  ]);
});
