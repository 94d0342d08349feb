import type { ControlsPosition, DataSheet } from '../../catalog';
import { along, midpoint, orient, type Point } from '../../geometry';
import type { PlacedControls, PlacedSide } from '../types';

/** Floor before the controls over which a hand reaches: the length of a forearm and hand. */
const REACH_DEPTH = 450;

/** Controls at one of the positions of the data sheet; null when it has none of that name. */
export function placeControls(id: string, sheet: DataSheet, sides: Record<ControlsPosition['side'], PlacedSide>): PlacedControls | null {
  const position = sheet.controls.find((item) => item.id === id);
  if (position === undefined) return null;
  const { normal } = sides[position.side];
  const face = { a: pointAlong(sides[position.side], position.from), b: pointAlong(sides[position.side], position.to) };
  const centre = midpoint(face.a, face.b);
  return {
    position,
    side: position.side,
    face,
    centre: { x: centre.x, y: centre.y, z: (position.zFrom + position.zTo) / 2 },
    normal,
    reachZone: orient([face.a, face.b, along(face.b, normal, REACH_DEPTH), along(face.a, normal, REACH_DEPTH)]),
  };
}

/**
 * The data sheet measures from the left edge on front and back, and from the back edge on left and
 * right: for the right side and the back that is from the other end of the edge as it is walked here.
 */
function pointAlong({ side, edge }: PlacedSide, distance: number): Point {
  const isWalkedBack = side === 'right' || side === 'back';
  const [from, to] = isWalkedBack ? [edge.b, edge.a] : [edge.a, edge.b];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return along(from, { x: (to.x - from.x) / length, y: (to.y - from.y) / length }, distance);
}
