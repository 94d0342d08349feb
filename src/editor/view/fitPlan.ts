import type { Point } from '../../geometry';
import type { Plan } from '../../plan';
import type { EditorState } from '../types';
import { type Bounds, fitView } from './view';

/** What chains of dimensions take on each side of the room, px. */
const DIMENSIONS_PX = 126;

/** Brings the whole plan into sight, with the dimensions around it. */
export function fitPlan(state: EditorState): EditorState {
  return { ...state, view: fitView(planBounds(state.history.present), state.viewport, DIMENSIONS_PX) };
}

/** Extent of the room with what stands or runs outside of it, mm. */
export function planBounds(plan: Plan): Bounds {
  const points: Point[] = [
    ...plan.room.outline,
    ...plan.machines,
    ...plan.things,
    ...plan.hoods,
    ...plan.runs.flatMap((run) => run.points),
  ];
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  return { min: { x: Math.min(...xs), y: Math.min(...ys) }, max: { x: Math.max(...xs), y: Math.max(...ys) } };
}
