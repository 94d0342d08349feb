import { type DataSheet, FAMILIES } from '../../catalog';
import { type FieldPath, findDataSheet, type Plan, type PlanField, placeOf, readField } from '../../plan';
import type { Scene } from '../../scene';
import { optionWords } from '../../text';
import { nameWall } from '../lists/names';
import type { FieldOption } from './field';

/** Fields that name something else of the plan or its data sheet: what can be chosen there. Null for all other fields. */
export function referenceOptions(scene: Scene, path: FieldPath): FieldOption[] | null {
  const options = REFERENCES[placeOf(path)];
  return options === undefined ? null : options(scene, path);
}

type Options = (scene: Scene, path: FieldPath) => FieldOption[];

const machines: Options = ({ machines: placed, marks }) =>
  placed.map(({ machine: { id }, sheet }) => ({ value: id, label: [marks[id], sheet.name].filter(Boolean).join(' · ') }));

const REFERENCES: Readonly<Record<string, Options>> = {
  'machines.sheet': ({ plan }) => [...plan.sheets, ...FAMILIES].map(({ id, name }) => ({ value: id, label: name })),
  'machines.controls': ({ plan }, path) => sheetAt(plan, path)?.controls.map(({ id, name }) => ({ value: id, label: name })) ?? [],
  'machines.electrical': ({ plan }, path) => sheetAt(plan, path)?.electrical.map(electricalOption) ?? [],
  'tables.place.machine': machines,
  'runs.machine': machines,
  'room.openings.wall': ({ plan }) => plan.room.outline.map(({ id }) => ({ value: id, label: nameWall(plan, id) })),
} satisfies Partial<Record<PlanField, Options>>;

function sheetAt(plan: Plan, path: FieldPath): DataSheet | undefined {
  const sheet = readField(plan, [...path.slice(0, -1), 'sheet']);
  return typeof sheet === 'string' ? findDataSheet(plan, sheet) : undefined;
}

function electricalOption({ id, voltage, phase, powerKw }: DataSheet['electrical'][number]): FieldOption {
  return { value: id, label: `${voltage} V, ${optionWords(phase, 'phase')}, ${powerKw} kW` };
}
