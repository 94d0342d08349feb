import { expect } from 'vitest';
import type { Point } from '../../src/geometry';
import type { Place } from '../../src/rules';
import type { PlanMotion } from './planMotions';

/** A finding's place moves with the plan: the same points, in any order. */
export function expectMovedPlace(place: Place, asDrawn: Place, motion: PlanMotion): void {
  expect(place.kind).toBe(asDrawn.kind);
  const found = pointsOf(place);
  const wanted = pointsOf(asDrawn).map((point) => movePoint(point, motion));
  expect(found.length).toBe(wanted.length);
  for (const point of wanted) {
    const nearest = Math.min(...found.map((other) => Math.hypot(other.x - point.x, other.y - point.y)));
    expect(nearest, `no point of the place at ${point.x}, ${point.y}`).toBeLessThan(1e-6);
  }
}

function pointsOf(place: Place): Point[] {
  if (place.kind === 'point') return [place.point];
  return place.kind === 'segment' ? [place.segment.a, place.segment.b] : place.polygons.flat();
}

function movePoint({ x, y }: Point, { mirror, rotateDeg = 0, move = { x: 0, y: 0 } }: PlanMotion): Point {
  const seen = { x: mirror === true ? -x : x, y };
  const angle = (rotateDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: seen.x * cos - seen.y * sin + move.x, y: seen.x * sin + seen.y * cos + move.y };
}
