import { deriveScene, type Scene } from '../../scene';
import type { EditorState } from '../types';
import { select } from './select';

/**
 * Chooses the next thing: first along the line from drop-off to storage, then everything else. Past
 * either end nothing changes, so that the focus can leave the canvas.
 */
export function cycleSelection(state: EditorState, isBack: boolean): EditorState {
  const order = orderOf(deriveScene(state.history.present));
  const [current] = state.selection;
  const index = current === undefined ? -1 : order.indexOf(current);
  const next = index < 0 ? (isBack ? order.at(-1) : order[0]) : order[index + (isBack ? -1 : 1)];
  return next === undefined ? state : select(state, [next]);
}

/** Ids in the order of the line, then what stands beside it. */
function orderOf({ lines, plan }: Scene): string[] {
  const stations = lines.flatMap(({ stations: row }) => row.flatMap(({ subject }) => subject ?? []));
  const { columns, floorDrains, stubs, openings, outline } = plan.room;
  const others = [plan.machines, plan.tables, plan.hoods, plan.runs, plan.things, openings, columns, floorDrains, stubs, outline].flat();
  return [...new Set([...stations, ...others.map(({ id }) => id)])];
}
