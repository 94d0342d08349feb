import type { Point } from '../../geometry';
import { moveItems, type Recipe, rotateItems } from '../../plan';
import type { Scene } from '../../scene';
import { stretchRun } from './stretchRun';

/**
 * Moves things with what belongs to them: joined tables follow their machine by the joint, a hood that
 * hangs over moved machines alone goes along, and a run stretches from its collar.
 */
export function moveThings(scene: Scene, ids: readonly string[], by: Point): Recipe {
  const all = withHoods(scene, ids);
  const runs = scene.plan.runs.filter((run) => all.includes(run.machine) && !all.includes(run.id));
  const stretched = new Map(runs.map((run) => [run.id, stretchRun(run, collarOf(scene, run.machine), by)]));
  return (draft) => {
    moveItems(all, by)(draft);
    for (const run of draft.runs) Object.assign(run, stretched.get(run.id));
  };
}

/** Turns things clockwise about one point, with the hoods over turned machines. */
export function rotateThings(scene: Scene, ids: readonly string[], deg: number, about: Point): Recipe {
  return rotateItems(withHoods(scene, ids), deg, about);
}

/** Things with the hoods that hang over the machines among them and over no other. */
export function withHoods(scene: Scene, ids: readonly string[]): string[] {
  const over = scene.hoods.filter(({ covers }) => covers.length > 0 && covers.every(({ machine }) => ids.includes(machine)));
  return [...new Set([...ids, ...over.map(({ hood }) => hood.id)])];
}

function collarOf(scene: Scene, machine: string) {
  return scene.machines.find((item) => item.machine.id === machine)?.collar ?? null;
}
