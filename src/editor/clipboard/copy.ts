import type { Plan } from '../../plan';
import { deleteSelection } from '../commands/deleteSelection';
import type { EditorState } from '../types';
import type { Clip } from './clip';

/** Keeps a copy of what is chosen. A machine takes its runs along. Walls and fittings by themselves are not copied. */
export function copySelection(state: EditorState): EditorState {
  const clip = createClip(state.history.present, state.selection);
  return clip === null ? state : { ...state, clipboard: clip };
}

/** Copies what is chosen and removes it. */
export function cutSelection(state: EditorState): EditorState {
  const copied = copySelection(state);
  return copied === state ? state : deleteSelection(copied);
}

function createClip(plan: Plan, ids: readonly string[]): Clip | null {
  const chosen = <T extends { id: string }>(items: readonly T[]) => items.filter(({ id }) => ids.includes(id));
  const { room } = plan;
  const machines = chosen(plan.machines);
  const clip = {
    machines,
    tables: chosen(plan.tables),
    things: chosen(plan.things),
    hoods: chosen(plan.hoods),
    runs: plan.runs.filter(({ id, machine }) => ids.includes(id) || ids.includes(machine)),
    columns: chosen(room.columns),
    floorDrains: chosen(room.floorDrains),
    stubs: chosen(room.stubs),
    openings: chosen(room.openings),
  };
  if (Object.values(clip).every((items) => items.length === 0)) return null;
  const sheets = plan.sheets.filter(({ id }) => machines.some(({ sheet }) => sheet === id));
  return { ...clip, sheets, source: plan, pasted: 0 };
}
