import type { PlacedHood, PlacedRun, Scene } from '../../scene';
import { markOf } from './names';

/** `the hood`, or `hood 4` (its item mark) where the plan has several. */
export const hoodName = (scene: Scene, { hood }: Pick<PlacedHood, 'hood'>) =>
  scene.plan.hoods.length < 2 ? 'the hood' : `hood ${markOf(scene, hood.id)}`;

/** `the run`, or `run 6` (its item mark) where the plan has several. */
export const runName = (scene: Scene, { run }: Pick<PlacedRun, 'run'>) =>
  scene.plan.runs.length < 2 ? 'the run' : `run ${markOf(scene, run.id)}`;
