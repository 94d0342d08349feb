import type { DataSheet } from '../../catalog';
import type { Field } from '../fields/field';
import type { DataSheetListName } from './sheetLists';

export interface DataSheetPart {
  readonly title: string;
  readonly keys: readonly (keyof DataSheet)[];
}

/** The parts of a data sheet as its form folds them; what names it stands first, under no heading. */
export const SHEET_PARTS: readonly DataSheetPart[] = [
  { title: '', keys: ['name', 'summary'] },
  { title: 'Size and doors', keys: ['width', 'depth', 'height', 'doors', 'rackLine', 'deckHeight', 'clearOpening', 'doorLiftHeight'] },
  { title: 'Joint tolerances', keys: ['joint'] },
  { title: 'Controls', keys: ['controlsChange', 'controls'] },
  { title: 'Connections', keys: ['connections'] },
  { title: 'Free space for service', keys: ['clearances'] },
  { title: 'Cycle and temperatures', keys: ['sanitizing', 'rinseKind', 'cycle', 'temperatures', 'thermometers'] },
  { title: 'Water', keys: ['waterFeed', 'rinseWaterL', 'rinsePressure', 'tank', 'booster', 'drainFlow'] },
  { title: 'Electrical versions', keys: ['electrical', 'idle'] },
  { title: 'Vent', keys: ['vent'] },
  { title: 'Conversion steps', keys: ['conversion'] },
];

/** Fields of a part that stand together: the members of a list one by one, all others by themselves. */
export interface FieldRun {
  readonly list: DataSheetListName | null;
  /** Which member of the list; null for what is in none. */
  readonly index: number | null;
  readonly title: string | null;
  readonly fields: readonly Field[];
}

/** The fields of one part of a data sheet, in order. */
export function fieldsOfPart({ keys }: DataSheetPart, fields: readonly Field[]): FieldRun[] {
  const runs = new Map<string, Field[]>();
  for (const key of keys) {
    for (const field of fields.filter(({ path }) => path[2] === key)) {
      const name = memberOf(field)?.join('.') ?? '';
      runs.set(name, [...(runs.get(name) ?? []), field]);
    }
  }
  return [...runs.values()].map(describeRun);
}

function describeRun(fields: Field[]): FieldRun {
  const [first] = fields;
  const member = first === undefined ? null : memberOf(first);
  return { list: member?.[0] ?? null, index: member?.[1] ?? null, title: first?.part ?? null, fields };
}

/** The list and the place in it that a field belongs to. */
function memberOf({ path }: Field): [DataSheetListName, number] | null {
  const at = path.findIndex((key, index) => index > 2 && typeof key === 'number');
  return at < 0 ? null : [path[at - 1] as DataSheetListName, path[at] as number];
}
