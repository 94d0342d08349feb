import type { Side } from '../../catalog';
import type { Recipe } from '../edit';
import { FLUSH, type JointPlace, jointFrame } from '../jointFrame';
import type { Plan, Table } from '../planSchema';
import { findDataSheet } from '../resolveDataSheet';

/** Joins a table to a machine side; flush, centred and square unless the joint says otherwise. */
export function joinTable(table: string, machine: string, side: Side, joint: JointPlace = FLUSH): Recipe {
  return (draft) => {
    const item = draft.tables.find(({ id }) => id === table);
    if (item !== undefined) item.place = { kind: 'joined', machine, side, ...joint };
  };
}

/** Frees a joined table; it stays where it is. */
export function freeTable(table: string): Recipe {
  return (draft) => {
    const item = draft.tables.find(({ id }) => id === table);
    if (item !== undefined) freeInPlace(draft, item);
  };
}

/** Frees a joined table of a draft where it stands. */
export function freeInPlace(draft: Plan, table: Table): void {
  const { place } = table;
  if (place.kind === 'free') return;
  const machine = draft.machines.find(({ id }) => id === place.machine);
  const sheet = machine && findDataSheet(draft, machine.sheet);
  if (machine === undefined || sheet === undefined) return;
  table.place = { kind: 'free', ...jointFrame(machine, sheet, place.side, place) };
}
