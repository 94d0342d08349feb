import {
  along,
  boundsOf,
  containsPoint,
  depthBefore,
  directionTo,
  distance,
  dot,
  floorBefore,
  type Point,
  type Segment,
  sub,
} from '../../../../geometry';
import { distanceToWalls, type Scene, type Solid, solidsIn } from '../../../../scene';

/** What stands before a face, and how far out it begins. */
export interface Before {
  /** In millimetres; as far as walls are looked for where nothing stands before it. */
  depth: number;
  /** What it is; null for a wall or for nothing. */
  solid: Solid | null;
  /** Floor between the face and it. */
  face: Segment;
}

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

/** A face, and which of what stands before it counts. */
export interface Front {
  face: Segment;
  normal: Point;
  /** Wider than the face, the space may be moved along it as far as it still covers it. */
  width: number;
  /** What begins above it does not count. */
  height: number;
  counts: (solid: Solid) => boolean;
  /** How far out it is looked; beyond it the floor is simply free. */
  reach?: number;
  body?: Body;
}

/** The deepest free space before a face. Where it may be moved, in the middle and flush at either end are tried. */
export function measureFreeDepth(scene: Scene, front: Front): Before {
  const { face, normal, width } = front;
  const spare = Math.max(0, width - distance(face.a, face.b));
  const way = directionTo(face.a, face.b);
  const places = (spare === 0 ? [0] : [spare / 2, 0, spare]).map((before) => ({
    a: along(face.a, way, -before),
    b: along(face.b, way, spare - before),
  }));
  const inRoom = places.filter((place) => isInRoom(scene, place, normal));
  if (inRoom.length === 0) return { depth: 0, solid: null, face };
  const found = inRoom.map((place) => nearestBefore(scene, place, front));
  return found.reduce((best, one) => (one.depth > best.depth + 1e-6 ? one : best));
}

function nearestBefore(scene: Scene, face: Segment, { normal, height, counts, reach = LOOK_AHEAD, body, face: own }: Front): Before {
  const wall = distanceToWalls(face, normal, scene.room.walls, TOLERANCE);
  let nearest: Before = { depth: Math.min(reach, Math.max(0, wall ?? LOOK_AHEAD)), solid: null, face };
  for (const solid of solidsIn(scene, boundsOf(floorBefore(face, normal, nearest.depth)))) {
    if (solid.kind === 'door-lift' || solid.zFrom >= height || !counts(solid)) continue;
    let depth = nearest.depth;
    for (const piece of solid.pieces) depth = depthBefore(piece, face, normal, depth, TOLERANCE);
    if (depth < nearest.depth && !mayBeThere(solid, own, normal, body)) nearest = { depth, solid, face };
  }
  return nearest;
}

const mayBeThere = (solid: Solid, face: Segment, normal: Point, body: Body | undefined) =>
  body !== undefined && isAboveOrBelow(solid, body) && reachesOut(solid, face, normal) <= body.projection;

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

/** Whether both ends of a face look into the room. */
function isInRoom({ room }: Scene, { a, b }: Segment, normal: Point): boolean {
  const way = directionTo(a, b);
  const ends = [along(a, way, TOLERANCE), along(b, way, -TOLERANCE)];
  return ends.every((end) => containsPoint(room.outline, along(end, normal, 2 * TOLERANCE)));
}

/** The face of a body of a width about its middle. */
export function frontFace(centre: Point, front: Point, width: number, depth: number): Segment {
  const middle = along(centre, front, depth / 2);
  const way = { x: front.y, y: -front.x };
  return { a: along(middle, way, width / 2), b: along(middle, way, -width / 2) };
}
