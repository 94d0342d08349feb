import {
  along,
  clipHalfPlane,
  containsPoint,
  directionTo,
  distance,
  dot,
  type Point,
  type Polygon,
  type Segment,
  scale,
  sub,
} from '../../geometry';
import { measureWalls, type Scene, type Solid } from '../../scene';

/** What stands before a face, and how far out it begins. */
export interface Before {
  /** In millimetres; as far as walls are looked for where nothing stands before it. */
  depth: number;
  /** What it is; null for a wall or for nothing. */
  solid: Solid | null;
  /** Floor between the face and it. */
  face: Segment;
}

/** The walls, and what stands before them. */
export type Floor = Pick<Scene, 'room' | 'solids'>;

/** Walls are looked for so far; beyond it the floor is simply free. */
const LOOK_AHEAD = 10_000;
/** Overlap that counts as drawing. */
const TOLERANCE = 1;

/** The height of what is worked on. What stays above or below it, and reaches out so far at most, may be there. */
export interface Body {
  zFrom: number;
  zTo: number;
  projection: number;
}

/**
 * The deepest free space before a face, `width` wide at least and up to `height`. A space wider than the face may be moved along it
 * as far as it still covers it: in the middle and flush at either end are tried.
 */
export function measureFreeDepth(
  scene: Floor,
  face: Segment,
  normal: Point,
  owner: string,
  width: number,
  height: number,
  body: Body | null = null,
): Before {
  const spare = Math.max(0, width - distance(face.a, face.b));
  const way = directionTo(face.a, face.b);
  const places = (spare === 0 ? [0] : [spare / 2, 0, spare]).map((before) => ({
    a: along(face.a, way, -before),
    b: along(face.b, way, spare - before),
  }));
  const isLeftOut = (solid: Solid) => body !== null && isAboveOrBelow(solid, body) && reachesOut(solid, face, normal) <= body.projection;
  const inRoom = places.filter((place) => isInRoom(scene, place, normal));
  if (inRoom.length === 0) return { depth: 0, solid: null, face };
  const found = inRoom.map((place) => nearestBefore(scene, place, normal, owner, height, isLeftOut));
  return found.reduce((best, one) => (one.depth > best.depth + 1e-6 ? one : best));
}

const isAboveOrBelow = ({ zFrom, zTo }: Solid, body: Body) => zFrom >= body.zTo - TOLERANCE || zTo <= body.zFrom + TOLERANCE;

/** How far a solid reaches out beyond the line of a face, where it lies before the face itself; infinite where it lies beside it. */
function reachesOut({ pieces }: Solid, { a, b }: Segment, normal: Point): number {
  const way = directionTo(a, b);
  const length = distance(a, b);
  const points = pieces.flat();
  const alongFace = points.map((p) => dot(sub(p, a), way));
  if (Math.max(...alongFace) <= TOLERANCE || Math.min(...alongFace) >= length - TOLERANCE) return Number.POSITIVE_INFINITY;
  return Math.max(...points.map((p) => dot(sub(p, a), normal))) - TOLERANCE;
}

function nearestBefore(
  scene: Floor,
  face: Segment,
  normal: Point,
  owner: string,
  height: number,
  isLeftOut: (solid: Solid) => boolean,
): Before {
  const wall = measureWalls(face, normal, scene.room.walls, 0, TOLERANCE).distance;
  let nearest: Before = { depth: Math.max(0, wall ?? LOOK_AHEAD), solid: null, face };
  const way = directionTo(face.a, face.b);
  const length = distance(face.a, face.b);
  for (const solid of scene.solids) {
    if (solid.owner === owner || solid.kind === 'door-lift' || solid.zFrom >= height || isLeftOut(solid)) continue;
    for (const piece of solid.pieces) {
      const depth = depthOf(piece, face, way, length, normal, nearest.depth);
      if (depth < nearest.depth) nearest = { depth, solid, face };
    }
  }
  return nearest;
}

/** Whether both ends of a face look into the room. */
function isInRoom({ room }: Floor, { a, b }: Segment, normal: Point): boolean {
  const way = directionTo(a, b);
  const ends = [along(a, way, TOLERANCE), along(b, way, -TOLERANCE)];
  return ends.every((end) => containsPoint(room.outline, along(end, normal, 2 * TOLERANCE)));
}

/** How far out a piece begins in the strip before a face; no less than `most` where it is not in it or farther. */
function depthOf(piece: Polygon, { a, b }: Segment, way: Point, length: number, normal: Point, most: number): number {
  let [from, near] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [to, far] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of piece) {
    const t = (p.x - a.x) * way.x + (p.y - a.y) * way.y;
    const d = (p.x - a.x) * normal.x + (p.y - a.y) * normal.y;
    from = Math.min(from, t);
    to = Math.max(to, t);
    near = Math.min(near, d);
    far = Math.max(far, d);
  }
  // Most of what stands about is beside the strip, behind the face or farther than something else.
  if (to <= TOLERANCE || from >= length - TOLERANCE || far <= TOLERANCE || near >= most) return most;
  if (near >= 0 && from >= 0 && to <= length) return near;
  const ahead = clipHalfPlane(piece, a, normal);
  const before = clipHalfPlane(clipHalfPlane(ahead, along(a, way, TOLERANCE), way), along(b, way, -TOLERANCE), scale(way, -1));
  return before.length === 0 ? most : Math.max(0, Math.min(...before.map((p) => dot(sub(p, a), normal))));
}

/** Floor before a face to a depth. */
export const floorBefore = ({ a, b }: Segment, normal: Point, depth: number): Polygon => [
  a,
  b,
  along(b, normal, depth),
  along(a, normal, depth),
];

/** The face of a body of a width about its middle. */
export function frontFace(centre: Point, front: Point, width: number, depth: number): Segment {
  const middle = along(centre, front, depth / 2);
  const way = { x: front.y, y: -front.x };
  return { a: along(middle, way, width / 2), b: along(middle, way, -width / 2) };
}
