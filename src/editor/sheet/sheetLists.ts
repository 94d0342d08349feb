import type { DataSheet } from '../../catalog';
import { type FieldPath, type Plan, type Recipe, readField } from '../../plan';
import { optionWords } from '../../text';
import { type CommandResult, carryOut, refusal } from '../line/commandResult';
import { machinesOf, sayMachines, whyCollarStays } from './inUse';

interface DataSheetList {
  /** From the data sheet to the list. */
  readonly path: FieldPath;
  /** One of its members, in the middle of a sentence. */
  readonly noun: string;
  /** What a new member is, beside the one that it follows; none before it where the list is empty. */
  readonly create: (sheet: DataSheet, before: unknown) => unknown;
  /** Said where the last member is to go; null where the list may be empty. */
  readonly last: string | null;
  /** Why a member must stay for now. */
  readonly whyStays?: (plan: Plan, sheet: DataSheet, index: number) => string | null;
}

type Of<K extends 'controls' | 'connections' | 'electrical'> = DataSheet[K][number];
type FanPoint = { airflow: number; pressure: number };

/** Where a step of the conversion begins; the person writes over it. */
const NEW_STEP = 'New step';

/** Airflow from the last point of a fan's curve to the next, m³/s. */
const NEXT_AIRFLOW = 0.05;

/** The lists of a data sheet that grow and shrink, by where they stand. */
export const SHEET_LISTS = {
  controls: {
    path: ['controls'],
    noun: 'position',
    create: ({ controls }, before) => ({
      ...(before as Of<'controls'>),
      id: freeId(controls, 'position'),
      name: `Position ${controls.length + 1}`,
    }),
    last: 'A data sheet has one position of the controls at least.',
    whyStays: whyPositionStays,
  },
  connections: {
    path: ['connections'],
    noun: 'connection',
    create: createConnection,
    last: null,
    whyStays: (plan, sheet, index) => whyCollarStays(plan, sheet, index),
  },
  electrical: {
    path: ['electrical'],
    noun: 'version',
    create: ({ electrical }, before) => ({ ...(before as Of<'electrical'>), id: freeId(electrical, 'version') }),
    last: 'A data sheet has one electrical version at least.',
    whyStays: whyVersionStays,
  },
  fanCurve: { path: ['vent', 'fanCurve'], noun: 'point', create: createFanPoint, last: null },
  toCorner: { path: ['conversion', 'toCorner'], noun: 'step', create: () => NEW_STEP, last: 'A conversion has one step at least.' },
  toStraight: { path: ['conversion', 'toStraight'], noun: 'step', create: () => NEW_STEP, last: 'A conversion has one step at least.' },
} satisfies Record<string, DataSheetList>;
export type DataSheetListName = keyof typeof SHEET_LISTS;

/** Adds a member to a list of a data sheet of the plan: after the one at `index`, or as its first (−1). */
export function addToSheet(plan: Plan, sheetId: string, name: DataSheetListName, index: number): CommandResult {
  const list: DataSheetList = SHEET_LISTS[name];
  return onList(plan, sheetId, list, (sheet, items) =>
    carryOut(plan, `Add ${list.noun}`, splice(plan, sheetId, list, index + 1, 0, list.create(sheet, items[index]))),
  );
}

/** Takes a member out of a list of a data sheet of the plan; one that something needs stays. */
export function removeFromSheet(plan: Plan, sheetId: string, name: DataSheetListName, index: number): CommandResult {
  const list: DataSheetList = SHEET_LISTS[name];
  return onList(plan, sheetId, list, (sheet, items) => {
    const problem = list.whyStays?.(plan, sheet, index) ?? (items.length < 2 ? list.last : null);
    return problem === null ? carryOut(plan, `Remove ${list.noun}`, splice(plan, sheetId, list, index, 1)) : refusal(problem);
  });
}

function onList(
  plan: Plan,
  id: string,
  list: DataSheetList,
  act: (sheet: DataSheet, items: readonly unknown[]) => CommandResult,
): CommandResult {
  const sheet = plan.sheets.find((one) => one.id === id);
  const items = sheet && readField(sheet, list.path);
  return sheet === undefined || !Array.isArray(items) ? refusal('This list is not in the data sheet any more.') : act(sheet, items);
}

function splice(plan: Plan, id: string, list: DataSheetList, at: number, gone: number, ...added: readonly unknown[]): Recipe {
  const path = ['sheets', plan.sheets.findIndex((sheet) => sheet.id === id), ...list.path];
  return (draft) => {
    (readField(draft, path) as unknown[]).splice(at, gone, ...added);
  };
}

function whyPositionStays(plan: Plan, sheet: DataSheet, index: number): string | null {
  const position = sheet.controls[index];
  const using = machinesOf(plan, sheet.id).filter(({ controls }) => controls === position?.id);
  return using.length === 0 ? null : `“${position?.name}” stays: the controls of ${sayMachines(plan, using)} are there.`;
}

function whyVersionStays(plan: Plan, sheet: DataSheet, index: number): string | null {
  const version = sheet.electrical[index];
  const using = machinesOf(plan, sheet.id).filter(({ electrical }) => electrical === version?.id);
  if (using.length === 0 || version === undefined) return null;
  return `${version.voltage} V, ${optionWords(version.phase, 'phase')} stays: ${sayMachines(plan, using)} is to have it.`;
}

/** Beside the one before it, or in the middle of the back. */
function createConnection({ connections, width }: DataSheet, before: unknown): Of<'connections'> {
  const beside = before as Of<'connections'> | undefined;
  const place =
    beside === undefined ? { x: width / 2, y: 0, z: 300, size: 0 } : { x: beside.x + 60, y: beside.y, z: beside.z, size: beside.size };
  return { id: freeId(connections, 'connection'), kind: 'cold-water', ...place, note: '' };
}

/** Halfway to the next point of the curve, or beyond its end. */
function createFanPoint({ vent }: DataSheet, before: unknown): FanPoint {
  const curve = vent.kind === 'direct' ? vent.fanCurve : [];
  const at = curve.indexOf(before as FanPoint);
  const [from, to] = [curve[at], curve[at + 1]];
  if (from === undefined) return { airflow: 0, pressure: 0 };
  if (to === undefined) return { airflow: from.airflow + NEXT_AIRFLOW, pressure: 0 };
  return { airflow: (from.airflow + to.airflow) / 2, pressure: (from.pressure + to.pressure) / 2 };
}

function freeId(items: readonly { id: string }[], stem: string): string {
  const taken = new Set(items.map(({ id }) => id));
  let number = 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
