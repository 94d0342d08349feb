import type { Recipe } from '../../../../plan';
import { deriveAfter, runChecks } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { check as doorSwingFree } from '../door-swing-free';
import { check as insideRoom } from '../inside-room';
import { check as nothingOverlaps } from '../nothing-overlaps';
import { check as passableWidth } from '../passable-width';
import { check as serviceClearances } from '../service-clearances';

/** What a thing that moves or grows can break. */
const ROOM_CHECKS = [insideRoom, nothingOverlaps, doorSwingFree, serviceClearances, passableWidth];

/** Whether the room takes a change: it brings no stop of the room that was not there before. */
export function fitsAfter(scene: Scene, recipe: Recipe): boolean {
  const before = new Set(stopsIn(scene));
  return stopsIn(deriveAfter(scene, recipe)).every((id) => before.has(id));
}

const stopsIn = (scene: Scene) =>
  runChecks(scene, ROOM_CHECKS)
    .filter(({ verdict }) => verdict === 'stop')
    .map(({ id }) => id);
