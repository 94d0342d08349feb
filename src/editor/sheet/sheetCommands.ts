import type { DataSheet } from '../../catalog';
import { duplicateSheet as duplicate, findDataSheet, ownDataSheet, type Plan, setSheet, takeSheet } from '../../plan';
import { type CommandResult, carryOut, refusal } from '../line/commandResult';
import { machinesOf, sayMachines } from './inUse';

/** Copies the data sheets of these machines into the plan, where their figures can be changed. Machines of one family share one copy. */
export function makeSheetOwn(plan: Plan, machines: readonly string[]): CommandResult {
  const chosen = plan.machines.filter(({ id }) => machines.includes(id));
  const toCopy = chosen.filter(({ sheet }) => !isOwnDataSheet(plan, sheet)).map(({ id }) => id);
  if (chosen.length === 0) return refusal('Choose a machine first.');
  if (toCopy.length === 0) return refusal('This data sheet is your own already.');
  return carryOut(plan, 'Make data sheet own', ownDataSheet(toCopy));
}

/** Doubles a data sheet, of the plan or of a family. The copy serves these machines; all others keep theirs. */
export function duplicateSheet(plan: Plan, sheet: string, machines: readonly string[] = []): CommandResult {
  if (findDataSheet(plan, sheet) === undefined) return refusal('There is no such data sheet any more.');
  return carryOut(plan, 'Duplicate data sheet', duplicate(sheet, machines));
}

/** Deletes a data sheet of the plan that no machine uses. */
export function deleteSheet(plan: Plan, sheet: string): CommandResult {
  const own = plan.sheets.find(({ id }) => id === sheet);
  if (own === undefined) return refusal('This data sheet is not in the plan.');
  const using = machinesOf(plan, sheet);
  if (using.length > 0) return refusal(`“${own.name}” stays: ${sayMachines(plan, using)} ${using.length > 1 ? 'use' : 'uses'} it.`);
  return carryOut(plan, 'Delete data sheet', (draft) => {
    draft.sheets.splice(
      draft.sheets.findIndex(({ id }) => id === sheet),
      1,
    );
  });
}

/** Lets machines be described by a data sheet of the plan or of a family. */
export function giveSheet(plan: Plan, sheet: string, machines: readonly string[]): CommandResult {
  return carryOut(plan, 'Change data sheet', (draft) => {
    for (const machine of machines) setSheet(machine, sheet)(draft);
  });
}

/** Adds a data sheet that was read from a file, for these machines. */
export function openSheet(plan: Plan, sheet: DataSheet, machines: readonly string[]): CommandResult {
  return carryOut(plan, 'Open data sheet', takeSheet(sheet, machines));
}

/** Whether a data sheet stands in the plan itself. */
export const isOwnDataSheet = (plan: Plan, sheet: string): boolean => plan.sheets.some(({ id }) => id === sheet);
