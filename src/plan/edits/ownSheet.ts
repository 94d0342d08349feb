import { createId } from '../createId';
import type { Recipe } from '../edit';
import { findSheet } from '../resolveSheet';
import { copyOf } from './copyOf';

/** Gives a machine a data sheet of its own in this plan, a copy of the one it has, so that its figures can be changed. */
export function ownSheet(machine: string): Recipe {
  return (draft) => {
    const item = draft.machines.find(({ id }) => id === machine);
    const sheet = item && findSheet(draft, item.sheet);
    if (item === undefined || sheet === undefined) return;
    const id = createId(draft, sheet.id);
    draft.sheets.push({ ...copyOf(sheet), id, name: `${sheet.name}, own figures`.slice(0, 200) });
    item.sheet = id;
  };
}

/** Gives a machine another data sheet, and the position of controls and the electrical variant that it has there. */
export function setSheet(machine: string, sheetId: string): Recipe {
  return (draft) => {
    const item = draft.machines.find(({ id }) => id === machine);
    const sheet = findSheet(draft, sheetId);
    if (item === undefined || sheet === undefined) return;
    item.sheet = sheet.id;
    const [controls] = sheet.controls;
    if (controls !== undefined && !sheet.controls.some(({ id }) => id === item.controls)) item.controls = controls.id;
    if (!sheet.electrical.some(({ id }) => id === item.electrical)) item.electrical = null;
  };
}
