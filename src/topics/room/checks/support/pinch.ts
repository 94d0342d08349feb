import { distanceToOutline, type Point, type Segment } from '../../../../geometry';
import { type Name, nameBody, nameOwner } from '../../../../rules';
import { type FloorObstacle, floorObstacles, HEAD_HEIGHT, type Scene } from '../../../../scene';

/** What stands at the ends of a pinch; an end where nothing is known is left out. */
export type Pinch = readonly PinchEnd[];

/** `hangs`: how far above the floor, and how much heads need, of what only hangs there. */
export interface PinchEnd {
  name: Name;
  hangs: { at: number; needed: number } | null;
}

export const describePinch = (scene: Scene, pinch: Segment | null): Pinch =>
  pinch === null ? [] : [pinch.a, pinch.b].flatMap((p) => describeEnd(scene, p));

function describeEnd(scene: Scene, p: Point): PinchEnd[] {
  const touched = touchedAt(scene, p);
  if (touched === undefined) return distanceToOutline(scene.room.outline, p) < 1 ? [{ name: { kind: 'wall' }, hangs: null }] : [];
  const { hangsAt, owner } = touched;
  return hangsAt === null
    ? [{ name: nameOwner(scene, owner), hangs: null }]
    : [{ name: nameBody(scene, touched), hangs: { at: hangsAt, needed: HEAD_HEIGHT } }];
}

/** What of the floor's obstacles has its outline at a point; what stands there before what hangs. */
export function touchedAt(scene: Scene, p: Point): FloorObstacle | undefined {
  const touched = floorObstacles(scene).filter(({ polygon }) => distanceToOutline(polygon, p) < 1);
  return touched.find(({ hangsAt }) => hangsAt === null) ?? touched[0];
}
