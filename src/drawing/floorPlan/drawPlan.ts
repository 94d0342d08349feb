import type { Scene } from '../../scene';
import type { Drawing } from '../drawing';
import { layLabels } from '../labels/layLabels';
import { drawThings } from './drawThings';
import type { PlanOptions } from './planOptions';

/**
 * The plan in plan millimetres, back to front: what stands and hangs in the room, then marks and notes.
 * Dimensions and findings are drawings of their own.
 */
export const drawPlan = (scene: Scene, options: PlanOptions): Drawing => [...drawThings(scene), ...layLabels(scene, options).prims];
