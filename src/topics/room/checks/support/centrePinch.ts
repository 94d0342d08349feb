import {
  along,
  directionTo,
  distanceToOutline,
  dot,
  edgesOf,
  lerp,
  type Point,
  type Polygon,
  rightOf,
  type Segment,
  sub,
} from '../../../../geometry';
import { floorObstacles, type Scene } from '../../../../scene';

/** How near a body's outline a pinch ends, and how flat two facing edges lie. */
const NEAR = 0.5;

/**
 * The same pinch from body to body in the middle of their gap. Two straight edges that face each
 * other are equally near all along, and the pair that was found lies at one end of it; where a
 * person stands free, the pinch that was found is half of the width there.
 */
export function centrePinch(scene: Scene, found: Segment | null): Segment | null {
  if (found === null) return null;
  const pinch = bodyAt(scene, found.a).length === 0 ? { a: lerp(found.b, found.a, 2), b: found.b } : found;
  const d = directionTo(pinch.a, pinch.b);
  const across = rightOf(d);
  const [one, other] = [facing(scene, pinch.a, d, across), facing(scene, pinch.b, { x: -d.x, y: -d.y }, across)];
  const [from, to] = [Math.max(one.from, other.from), Math.min(one.to, other.to)];
  if (to - from <= NEAR) return pinch;
  const middle = (from + to) / 2;
  const shifted = (p: Point) => along(p, across, middle - dot(p, across));
  return { a: shifted(pinch.a), b: shifted(pinch.b) };
}

/** How far the side of the body at `p` that looks along `d` goes, measured across. */
function facing(scene: Scene, p: Point, d: Point, across: Point): { from: number; to: number } {
  const flush = bodyAt(scene, p).filter((corner) => Math.abs(dot(sub(corner, p), d)) <= NEAR);
  const reach = [p, ...flush].map((corner) => dot(corner, across));
  return { from: Math.min(...reach), to: Math.max(...reach) };
}

/** Corners of the obstacle that a point lies on, or of its wall. */
function bodyAt(scene: Scene, p: Point): Polygon {
  const walls = edgesOf(scene.room.outline).map(({ a, b }) => [a, b]);
  return [...floorObstacles(scene).map(({ polygon }) => polygon), ...walls].find((polygon) => distanceToOutline(polygon, p) <= NEAR) ?? [];
}
