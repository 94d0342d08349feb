import { edit, type Recipe } from '../../plan';
import { deriveScene, type Scene } from '../../scene';

/** The scene as it would be after a change: for repairs that must not bring another fault. Only asked for once something is wrong. */
export const deriveAfter = (scene: Scene, recipe: Recipe): Scene => deriveScene(edit(scene.plan, '', recipe).plan);
