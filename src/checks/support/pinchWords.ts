import { distanceToOutline, type Point, type Segment } from '../../geometry';
import { floorObstacles, type Scene } from '../../scene';
import { ownerName } from './bodyNames';
import { list } from './words';

/** What stands at both ends of the pinch: ` between the cart and the wall`; nothing where nothing is known. */
export function pinchWords(scene: Scene, pinch: Segment | null): string {
  const names = pinch === null ? [] : [...new Set([pinch.a, pinch.b].flatMap((p) => nameAt(scene, p)))];
  if (names.length < 2) return names[0] === 'the wall' ? ' between the walls' : names.map((name) => ` beside ${name}`).join('');
  return ` between ${list(names)}`;
}

function nameAt(scene: Scene, p: Point): string[] {
  const touched = touchedAt(scene, p);
  if (touched !== undefined) return [ownerName(scene, touched.owner)];
  return distanceToOutline(scene.room.outline, p) < 1 ? ['the wall'] : [];
}

/** What of the floor's obstacles has its outline at a point. */
export const touchedAt = (scene: Scene, p: Point) => floorObstacles(scene).find(({ polygon }) => distanceToOutline(polygon, p) < 1);
