import type { Scene } from '../../scene';
import type { Drawing } from '../drawing';
import { layMarks } from '../labels/layLabels';
import type { PlanOptions } from './planOptions';

/** The item marks alone, where the whole plan has them. */
export const drawMarks = (scene: Scene, options: PlanOptions): Drawing => layMarks(scene, options).prims;
