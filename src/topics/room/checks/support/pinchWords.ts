import { distanceToOutline, type Point, type Segment } from '../../../../geometry';
import { bodyName, list, ownerName } from '../../../../rules';
import { type FloorObstacle, floorObstacles, HEAD_HEIGHT, type Scene } from '../../../../scene';
import type { Formatter } from '../../../../units';

/** What stands at both ends of the pinch: ` between the cart and the wall`; what only hangs there says how low. Nothing where nothing is known. */
export function pinchWords(scene: Scene, pinch: Segment | null, f: Formatter): string {
  const names = pinch === null ? [] : [...new Set([pinch.a, pinch.b].flatMap((p) => nameAt(scene, p, f)))];
  if (names.length < 2) return names[0] === 'the wall' ? ' between the walls' : names.map((name) => ` beside ${name}`).join('');
  return ` between ${list(names)}`;
}

function nameAt(scene: Scene, p: Point, f: Formatter): string[] {
  const touched = touchedAt(scene, p);
  if (touched !== undefined)
    return [touched.hangsAt === null ? ownerName(scene, touched.owner) : hangingName(scene, touched, touched.hangsAt, f)];
  return distanceToOutline(scene.room.outline, p) < 1 ? ['the wall'] : [];
}

const hangingName = (scene: Scene, { owner, kind }: FloorObstacle, hangsAt: number, f: Formatter) =>
  `${bodyName(scene, { owner, kind })} (it hangs ${f.length(hangsAt)} above the floor, heads need ${f.length(HEAD_HEIGHT)})`;

/** What of the floor's obstacles has its outline at a point; what stands there before what hangs. */
export function touchedAt(scene: Scene, p: Point): FloorObstacle | undefined {
  const touched = floorObstacles(scene).filter(({ polygon }) => distanceToOutline(polygon, p) < 1);
  return touched.find(({ hangsAt }) => hangsAt === null) ?? touched[0];
}
