import type { Recipe } from '../../plan';
import type { Scene } from '../../scene';
import { check as doorSwingFree } from '../rules/door-swing-free';
import { check as insideRoom } from '../rules/inside-room';
import { check as nothingOverlaps } from '../rules/nothing-overlaps';
import { check as passableWidth } from '../rules/passable-width';
import { check as serviceClearances } from '../rules/service-clearances';
import { runChecks } from '../runChecks';
import { deriveAfter } from './deriveAfter';

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
