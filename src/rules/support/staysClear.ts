import type { Recipe } from '../../plan';
import type { Scene } from '../../scene';
import type { Check } from '../check';
import { runChecks } from '../runChecks';
import { deriveAfter } from './deriveAfter';

/** Whether a change brings nothing that these checks would complain of and did not before. */
export function staysClear(scene: Scene, recipe: Recipe, checks: readonly Check[]): boolean {
  const before = new Set(complaintsIn(scene, checks));
  return complaintsIn(deriveAfter(scene, recipe), checks).every((complaint) => before.has(complaint));
}

const complaintsIn = (scene: Scene, checks: readonly Check[]) =>
  runChecks(scene, checks)
    .filter(({ verdict }) => verdict !== 'clear')
    .map(({ id, verdict }) => `${verdict} ${id}`);
