import {
  containsPoint,
  directionTo,
  dot,
  edgesOf,
  isNear,
  isNearBounds,
  leftOf,
  length,
  type Point,
  type Polygon,
  penetration,
  scale,
} from '../../../../geometry';
import type { Scene, Solid } from '../../../../scene';

/** Overlap that counts as drawing, not as a clash. */
export const DRAWING_TOLERANCE = 1;

/** How deep two bodies stand in each other, where, and the move that parts them. */
export interface Clash {
  one: Solid;
  other: Solid;
  /** The least move that parts them, in plan or in height, mm. */
  depth: number;
  /** The piece of each that meets the other deepest. */
  pieces: readonly [Polygon, Polygon];
}

/** Bodies that stand in a person's way to a clash: everything but the room that the doors need, which has a check of its own. */
export const isBody = ({ kind }: Solid) => kind !== 'door-lift';

/** The deepest overlap of two bodies, more than the drawing's tolerance; null when they are apart. */
export function findClash(one: Solid, other: Solid): Clash | null {
  if (!isOver(sharedHeight(one, other)) || !isNearBounds(one.bounds, other.bounds, -DRAWING_TOLERANCE)) return null;
  let worst: Clash | null = null;
  for (const a of one.pieces) {
    for (const b of other.pieces) {
      const clash = clashPieces(one, other, a, b);
      if (clash !== null && clash.depth > (worst?.depth ?? 0)) worst = clash;
    }
  }
  return worst;
}

function clashPieces(one: Solid, other: Solid, a: Polygon, b: Polygon): Clash | null {
  const height = heightToPart(one, other, a, b);
  if (!isOver(height)) return null;
  const depth = penetration(a, b);
  if (!isOver(depth)) return null;
  return { one, other, depth: Math.min(depth, height), pieces: [a, b] };
}

/** More than the tolerance, and more than rounding beyond it. */
export const isOver = (depth: number) => depth > DRAWING_TOLERANCE + 1e-6;

/** Moves of `b`, square to an edge of either, that part the two. The shortest, after which they touch, comes first. */
export function listExits([a, b]: readonly [Polygon, Polygon]): Point[] {
  const normals = [...edgesOf(a), ...edgesOf(b)].map((edge) => leftOf(directionTo(edge.a, edge.b)));
  const exits = normals.flatMap((normal) => [normal, scale(normal, -1)]).map((d) => scale(d, reach(a, d) + reach(b, scale(d, -1))));
  const once = exits.filter((exit, i) => exits.findIndex((other) => isNear(exit, other)) === i);
  return once.sort((p, q) => length(p) - length(q));
}

/** How far a polygon goes in a direction. */
const reach = (polygon: Polygon, d: Point) => Math.max(...polygon.map((p) => dot(p, d)));

/**
 * How far one of two bodies must go up or down to be free of the other. A hood is hollow: what
 * stands wholly under it meets only its top.
 */
function heightToPart(one: Solid, other: Solid, a: Polygon, b: Polygon): number {
  if (one.kind === 'hood' && other.kind !== 'hood' && isUnder(a, b)) return other.zTo - one.zTo;
  if (other.kind === 'hood' && one.kind !== 'hood' && isUnder(b, a)) return one.zTo - other.zTo;
  return Math.min(one.zTo - other.zFrom, other.zTo - one.zFrom);
}

/** Whether a piece lies wholly within the lip of a hood. */
export const isUnder = (hood: Polygon, piece: Polygon) => piece.every((p) => containsPoint(hood, p));

const sharedHeight = (one: Solid, other: Solid) => Math.min(one.zTo, other.zTo) - Math.max(one.zFrom, other.zFrom);

/** Pairs that are meant to meet, or that another check looks after. */
export function isMeant(scene: Scene, one: Solid, other: Solid): boolean {
  return one.owner === other.owner || isMeantOneWay(scene, one, other) || isMeantOneWay(scene, other, one);
}

function isMeantOneWay(scene: Scene, one: Solid, other: Solid): boolean {
  if (one.kind === 'column') return other.kind === 'column';
  // Whether a table meets its machine flush is said at the joint.
  if (one.kind === 'machine' && (other.kind === 'table' || other.kind === 'backsplash')) {
    return scene.joints.some((joint) => joint.machine === one.owner && joint.table === other.owner);
  }
  if (one.kind !== 'run') return false;
  // A run goes up through the hood over its machine.
  const machine = scene.runs.find(({ run }) => run.id === one.owner)?.run.machine;
  if (other.kind === 'hood')
    return scene.hoods.some(({ hood, covers }) => hood.id === other.owner && covers.some((cover) => cover.machine === machine));
  return other.kind === 'machine' && isAtCollar(scene, one, other.owner);
}

/** The leg of a run that leaves its machine through the collar; all of it where the machine has no collar. */
export function isAtCollar({ runs, machines }: Scene, leg: Solid, machine: string): boolean {
  if (leg.kind !== 'run' || !runs.some(({ run }) => run.id === leg.owner && run.machine === machine)) return false;
  const collar = machines.find((item) => item.machine.id === machine)?.collar ?? null;
  if (collar === null) return true;
  const isAtHeight = leg.zFrom <= collar.z + DRAWING_TOLERANCE && leg.zTo >= collar.z - DRAWING_TOLERANCE;
  return isAtHeight && leg.pieces.some((piece) => containsPoint(piece, collar));
}
