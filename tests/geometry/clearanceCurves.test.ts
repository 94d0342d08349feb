import { expect, test } from 'vitest';
import type { Point } from '../../src/geometry';
import {
  type ClearanceCurve,
  distanceToCurve,
  eachClearanceCurve,
  eachCrossing,
  eachEnd,
  footPoint,
  segmentCurve,
} from '../../src/geometry/clearanceCurves';
import { MOTIONS, points } from '../support/motions';

const BOX = points([0, 0], [400, 0], [400, 200], [0, 200]);
const circle = (x: number, y: number, radius: number): ClearanceCurve => ({ kind: 'circle', centre: { x, y }, radius });
const segment = (ax: number, ay: number, bx: number, by: number) => segmentCurve({ a: { x: ax, y: ay }, b: { x: bx, y: by } });

const round = (value: number) => Math.round(value * 1000) / 1000 + 0;
const wordOf = ({ x, y }: Point) => `${round(x)} ${round(y)}`;
const curveWord = (curve: ClearanceCurve) =>
  curve.kind === 'circle'
    ? `circle ${wordOf(curve.centre)} r ${curve.radius}`
    : `from ${[wordOf(curve.segment.a), wordOf(curve.segment.b)].toSorted().join(' to ')}`;

const CIRCLES = ['circle 0 0 r 50', 'circle 0 200 r 50', 'circle 400 0 r 50', 'circle 400 200 r 50'];

test.each([
  { side: 'outside', moved: ['from -50 0 to -50 200', 'from 0 -50 to 400 -50', 'from 0 250 to 400 250', 'from 450 0 to 450 200'] },
  { side: 'inside', moved: ['from 0 150 to 400 150', 'from 0 50 to 400 50', 'from 350 0 to 350 200', 'from 50 0 to 50 200'] },
] as const)('50 $side a box: its edges moved, and a circle about each corner', ({ side, moved }) => {
  for (const outline of [BOX, BOX.toReversed()]) {
    const found: string[] = [];
    eachClearanceCurve(outline, 50, side, (curve) => found.push(curveWord(curve)));
    expect(found.toSorted()).toEqual([...CIRCLES, ...moved].toSorted());
  }
});

test('a corner that is there twice has no edge', () => {
  const found: string[] = [];
  eachClearanceCurve(points([0, 0], [400, 0], [400, 0], [0, 300]), 50, 'outside', (curve) => found.push(curve.kind));
  expect(found.toSorted()).toEqual(['circle', 'circle', 'circle', 'circle', 'segment', 'segment', 'segment']);
});

test.each([
  {
    name: 'a circle, from outside',
    curve: circle(0, 0, 50),
    p: { x: 30, y: 40 + 40 },
    away: Math.hypot(30, 80) - 50,
    foot: { x: 17.556, y: 46.816 },
  },
  { name: 'a circle, from inside', curve: circle(0, 0, 50), p: { x: 0, y: -20 }, away: 30, foot: { x: 0, y: -50 } },
  { name: 'a circle, from its centre', curve: circle(10, 10, 50), p: { x: 10, y: 10 }, away: 50, foot: null },
  { name: 'an edge, beside it', curve: segment(0, 0, 100, 0), p: { x: 30, y: -7 }, away: 7, foot: { x: 30, y: 0 } },
  { name: 'an edge, behind its end', curve: segment(0, 0, 100, 0), p: { x: 103, y: 4 }, away: 5, foot: { x: 100, y: 0 } },
])('how far, and where: $name', ({ curve, p, away, foot }) => {
  expect(distanceToCurve(p, curve)).toBeCloseTo(away, 6);
  const found = footPoint(p, curve);
  expect(found && wordOf(found)).toBe(foot && wordOf(foot));
});

test('an edge has two ends, a circle none', () => {
  const ends: string[] = [];
  eachEnd(segment(1, 2, 3, 4), (end) => ends.push(wordOf(end)));
  eachEnd(circle(0, 0, 5), (end) => ends.push(wordOf(end)));
  expect(ends).toEqual(['1 2', '3 4']);
});

// 3 : 4 : 5 throughout.
test.each([
  { name: 'two edges', one: segment(0, 0, 10, 10), other: segment(0, 10, 10, 0), met: points([5, 5]) },
  { name: 'two edges apart', one: segment(0, 0, 10, 0), other: segment(0, 5, 10, 5), met: [] },
  { name: 'two edges, one short of the other', one: segment(0, 0, 4, 4), other: segment(0, 10, 10, 0), met: [] },
  { name: 'an edge through a circle', one: segment(-10, 3, 10, 3), other: circle(0, 0, 5), met: points([-4, 3], [4, 3]) },
  { name: 'an edge that begins in it', one: segment(0, 3, 10, 3), other: circle(0, 0, 5), met: points([4, 3]) },
  { name: 'an edge that ends in it', one: segment(-10, 3, 0, 3), other: circle(0, 0, 5), met: points([-4, 3]) },
  { name: 'an edge wholly in it', one: segment(-1, 3, 1, 3), other: circle(0, 0, 5), met: [] },
  { name: 'an edge that ends before it', one: segment(-10, 3, -5, 3), other: circle(0, 0, 5), met: [] },
  { name: 'an edge that begins behind it', one: segment(5, 3, 10, 3), other: circle(0, 0, 5), met: [] },
  { name: 'an edge past it', one: segment(-10, 5.1, 10, 5.1), other: circle(0, 0, 5), met: [] },
  { name: 'an edge without length', one: segment(3, 4, 3, 4), other: circle(0, 0, 5), met: [] },
  { name: 'two circles', one: circle(0, 0, 5), other: circle(6, 0, 5), met: points([3, 4], [3, -4]) },
  { name: 'two circles of two sizes', one: circle(0, 0, 5), other: circle(7, 0, Math.sqrt(32)), met: points([3, 4], [3, -4]) },
  { name: 'two circles of two sizes, across', one: circle(0, 0, 5), other: circle(0, 7, Math.sqrt(32)), met: points([4, 3], [-4, 3]) },
  { name: 'two circles apart', one: circle(0, 0, 5), other: circle(10.1, 0, 5), met: [] },
  { name: 'one circle in another', one: circle(0, 0, 5), other: circle(1, 0, 3.9), met: [] },
  { name: 'one about another', one: circle(1, 0, 3.9), other: circle(0, 0, 5), met: [] },
  { name: 'two circles about one centre', one: circle(2, 2, 5), other: circle(2, 2, 5), met: [] },
])('where curves meet: $name', ({ one, other, met }) => {
  for (const { name, move } of MOTIONS.filter((motion) => motion.name !== 'moved far')) {
    for (const [a, b] of [
      [one, other],
      [other, one],
    ] as const) {
      const found: string[] = [];
      eachCrossing(moved(a, move), moved(b, move), (p) => found.push(wordOf(p)));
      expect([name, ...found.toSorted()]).toEqual([name, ...met.map((p) => wordOf(move(p))).toSorted()]);
    }
  }
});

test('an edge that begins and ends on a circle meets it at both ends', () => {
  const found: string[] = [];
  eachCrossing(segment(-4, 3, 4, 3), circle(0, 0, 5), (p) => found.push(wordOf(p)));
  expect(found).toEqual(['-4 3', '4 3']);
});

test('circles that touch meet twice in one place', () => {
  for (const other of [circle(10, 0, 5), circle(2, 0, 3)]) {
    const found: string[] = [];
    eachCrossing(circle(0, 0, 5), other, (p) => found.push(wordOf(p)));
    expect(found).toEqual(['5 0', '5 0']);
  }
});

const moved = (curve: ClearanceCurve, move: (p: Point) => Point): ClearanceCurve =>
  curve.kind === 'circle' ? { ...curve, centre: move(curve.centre) } : segmentCurve({ a: move(curve.segment.a), b: move(curve.segment.b) });
