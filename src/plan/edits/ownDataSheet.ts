import { type DataSheet, findFamily } from '../../catalog';
import { createId } from '../createId';
import type { Recipe } from '../edit';
import type { Plan } from '../planSchema';
import { listIds } from '../problems/findIdProblems';
import { findDataSheet } from '../resolveDataSheet';
import { copyOf } from './copyOf';

/**
 * Gives machines data sheets of their own in this plan, copies of those that they have, so that their figures can be changed.
 * Machines of one family then share one copy.
 */
export function ownDataSheet(machines: readonly string[]): Recipe {
  return (draft) => {
    const copies = new Map<string, string>();
    for (const machine of draft.machines.filter(({ id }) => machines.includes(id))) {
      const copy = copies.get(machine.sheet) ?? copySheet(draft, machine.sheet, ', own figures');
      if (copy === null) continue;
      copies.set(machine.sheet, copy);
      machine.sheet = copy;
    }
  };
}

/** Doubles a data sheet. The copy serves these machines; all others keep theirs. */
export function duplicateSheet(sheet: string, machines: readonly string[] = []): Recipe {
  return (draft) => {
    const copy = copySheet(draft, sheet, ', copy');
    for (const machine of draft.machines) if (copy !== null && machines.includes(machine.id)) machine.sheet = copy;
  };
}

/** Adds a data sheet to the plan; under its own id unless something else bears it. It then serves these machines. */
export function takeSheet(sheet: DataSheet, machines: readonly string[] = []): Recipe {
  return (draft) => {
    const isFree = findFamily(sheet.id) === undefined && !listIds(draft).some(({ id }) => id === sheet.id);
    const id = isFree ? sheet.id : createId(draft, stemOf(sheet.id));
    draft.sheets.push({ ...copyOf(sheet), id });
    for (const machine of machines) setSheet(machine, id)(draft);
  };
}

/** Gives a machine another data sheet, and the position of controls and the electrical variant that it has there. */
export function setSheet(machine: string, sheetId: string): Recipe {
  return (draft) => {
    const item = draft.machines.find(({ id }) => id === machine);
    const sheet = findDataSheet(draft, sheetId);
    if (item === undefined || sheet === undefined) return;
    item.sheet = sheet.id;
    const [controls] = sheet.controls;
    if (controls !== undefined && !sheet.controls.some(({ id }) => id === item.controls)) item.controls = controls.id;
    if (!sheet.electrical.some(({ id }) => id === item.electrical)) item.electrical = null;
  };
}

/** Id of the copy; null where there is nothing to copy. */
function copySheet(draft: Plan, id: string, suffix: string): string | null {
  const sheet = findDataSheet(draft, id);
  if (sheet === undefined) return null;
  const copy = { ...copyOf(sheet), id: createId(draft, stemOf(id)), name: freeName(draft, `${sheet.name.slice(0, 180)}${suffix}`) };
  draft.sheets.push(copy);
  return copy.id;
}

/** `direct-vent-2` gives `direct-vent`. */
const stemOf = (id: string): string => id.replace(/-\d+$/, '');

/** Two data sheets of a plan are told apart by their names. */
function freeName(draft: Plan, name: string): string {
  const taken = new Set(draft.sheets.map((sheet) => sheet.name));
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name} ${number}`;
  return free;
}
