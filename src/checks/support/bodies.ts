import { type Bounds, boundsOf, clipConvex, containsPoint, isNearBounds, type Point, type Polygon, penetration } from '../../geometry';
import type { Scene, Solid } from '../../scene';

/** Overlap that counts as drawing, not as a clash. */
export const DRAWING_TOLERANCE = 1;

/** How deep two bodies stand in each other, where, and the move that parts them. */
export interface Clash {
  one: Solid;
  other: Solid;
  /** The least move that parts them, in plan or in height, mm. */
  depth: number;
  /** In plan, `other` leaves `one` by this move. */
  push: Point;
  /** The area that both claim. */
  overlap: Polygon;
}

/** Bodies that stand in a person's way to a clash: everything but the room that the doors need, which has a check of its own. */
export const isBody = ({ kind }: Solid) => kind !== 'door-lift';

/** The deepest overlap of two bodies, more than the drawing's tolerance; null when they are apart. */
export function findClash(one: Solid, other: Solid): Clash | null {
  if (heightOverlap(one, other) <= DRAWING_TOLERANCE || !isNearBounds(boxOf(one), boxOf(other), -DRAWING_TOLERANCE)) return null;
  let worst: Clash | null = null;
  for (const a of one.pieces) {
    for (const b of other.pieces) {
      const clash = clashPieces(one, other, a, b);
      if (clash !== null && clash.depth > (worst?.depth ?? DRAWING_TOLERANCE)) worst = clash;
    }
  }
  return worst;
}

function clashPieces(one: Solid, other: Solid, a: Polygon, b: Polygon): Clash | null {
  const height = hollowOverlap(one, other, a, b);
  if (height <= DRAWING_TOLERANCE) return null;
  const { depth, normal } = penetration(a, b);
  if (depth <= DRAWING_TOLERANCE) return null;
  return {
    one,
    other,
    depth: Math.min(depth, height),
    push: { x: normal.x * depth, y: normal.y * depth },
    overlap: clipConvex(a, b),
  };
}

/** A hood is hollow: what stands wholly under it meets only its top. */
function hollowOverlap(one: Solid, other: Solid, a: Polygon, b: Polygon): number {
  if (one.kind === 'hood' && other.kind !== 'hood' && isUnder(a, b)) return other.zTo - one.zTo;
  if (other.kind === 'hood' && one.kind !== 'hood' && isUnder(b, a)) return one.zTo - other.zTo;
  return heightOverlap(one, other);
}

/** Whether a piece lies wholly within the lip of a hood. */
export const isUnder = (hood: Polygon, piece: Polygon) => piece.every((p) => containsPoint(hood, p));

const heightOverlap = (one: Solid, other: Solid) => Math.min(one.zTo, other.zTo) - Math.max(one.zFrom, other.zFrom);

/** Box around a body in plan. Bodies are never changed, so each is measured once. */
export function boxOf(solid: Solid): Bounds {
  const known = BOXES.get(solid);
  if (known !== undefined) return known;
  const box = boundsOf(solid.pieces.flat());
  BOXES.set(solid, box);
  return box;
}

const BOXES = new WeakMap<Solid, Bounds>();

/** Pairs that are meant to meet, or that another check looks after. */
export function isMeant(scene: Scene, one: Solid, other: Solid): boolean {
  return one.owner === other.owner || isMeantOneWay(scene, one, other) || isMeantOneWay(scene, other, one);
}

function isMeantOneWay({ joints, runs, hoods }: Scene, one: Solid, other: Solid): boolean {
  if (one.kind === 'column') return other.kind === 'column';
  // Whether a table meets its machine flush is said at the joint.
  if (one.kind === 'machine' && (other.kind === 'table' || other.kind === 'backsplash')) {
    return joints.some((joint) => joint.machine === one.owner && joint.table === other.owner);
  }
  if (one.kind !== 'run') return false;
  // A run leaves its machine through the collar, and goes up through the hood over that machine.
  const machine = runs.find(({ run }) => run.id === one.owner)?.run.machine;
  if (other.kind === 'hood')
    return hoods.some(({ hood, covers }) => hood.id === other.owner && covers.some((cover) => cover.machine === machine));
  return other.kind === 'machine' && other.owner === machine;
}
