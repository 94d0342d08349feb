import { z } from 'zod/mini';
import { type FieldPath, type Plan, readField } from '../../plan';
import type { Scene } from '../../scene';
import { findSubject, type Subject, type SubjectKind, subjectsOf } from '../subject/subject';
import type { Field, FieldValue } from './field';
import { fieldWord, optionLabel } from './fieldWords';
import { leafOf } from './leaf';
import { referenceOptions } from './references';
import { objectSchema, schemaAt, unwrapNullable } from './schemaAt';
import { wallFields } from './wallFields';

/** Parts of the plan that are no things in the room: their own cards. */
export const SECTIONS = [
  '@room',
  '@demand',
  '@supply',
  '@order',
  '@air',
  '@pipes',
  '@finish',
  '@tariff',
  '@codes',
  '@title',
  '@settings',
] as const;
export type Section = (typeof SECTIONS)[number];

/**
 * Every editable property of what is chosen, in the order of the card: a thing by its id, a part of
 * the plan by its section. An unknown id has none.
 */
export function fieldsFor(plan: Plan, scene: Scene, id: string): Field[] {
  const section = SECTIONS.find((name) => name === id);
  if (section !== undefined) return sectionFields(scene, section);
  const subject = findSubject(plan, id);
  if (subject === null) return [];
  return subject.kind === 'corner' ? wallFields(plan, subject.id) : subjectFields(scene, subject);
}

/** The field at a place of the plan; null where nothing can be typed. */
export function fieldAt(plan: Plan, scene: Scene, path: FieldPath): Field | null {
  const owner = [...subjectsOf(plan).values()].find((subject) => subject.kind !== 'fitting' && isWithin(path, subject.path));
  const fields = owner === undefined ? fieldsFor(plan, scene, `@${path[0]}`) : fieldsFor(plan, scene, owner.id);
  return fields.find((field) => field.path.length === path.length && isWithin(path, field.path)) ?? null;
}

const isWithin = (path: FieldPath, base: FieldPath) => base.every((key, index) => path[index] === key);

/** The fields of a thing; those of its fittings stand on its table's card too. */
function subjectFields(scene: Scene, { kind, path }: Subject): Field[] {
  return collect({ scene, owner: OWNERS[kind], path, part: null });
}

const OWNERS: Record<SubjectKind, string> = {
  machine: 'machine',
  table: 'table',
  fitting: 'fittings',
  thing: 'thing',
  hood: 'hood',
  run: 'run',
  corner: 'corner',
  opening: 'opening',
  column: 'column',
  'floor-drain': 'drain',
  stub: 'stub',
};

/** The room's card holds its corners; what stands in its walls has cards of its own. */
function sectionFields(scene: Scene, section: Section): Field[] {
  const name = section.slice(1);
  const fields = collect({ scene, owner: name, path: [name], part: null });
  return fields.filter(({ path }) => path[0] !== 'room' || !OWN_CARDS.includes(String(path[1])));
}

const OWN_CARDS = ['openings', 'columns', 'floorDrains', 'stubs'];

/** A place in the plan under inspection, and what it is called there. */
interface Spot {
  scene: Scene;
  owner: string;
  path: FieldPath;
  part: string | null;
}

function collect(spot: Spot): Field[] {
  const schema = schemaAt(spot.scene.plan, spot.path);
  if (schema === null) return [];
  const value = readField(spot.scene.plan, spot.path);
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodMiniArray) return collectList(spot, value as unknown[]);
  const object = objectSchema(schema, value);
  if (object !== null && value !== null) return collectKeys(spot, Object.keys(object.shape));
  const field = leafField(spot, schema, value as FieldValue);
  return field === null ? [] : [field];
}

function collectKeys(spot: Spot, keys: string[]): Field[] {
  return keys.flatMap((key) => {
    const path = [...spot.path, key];
    const schema = schemaAt(spot.scene.plan, path);
    if (schema === null || isPermanent(key)) return [];
    if (key === 'kind' || isLeaf(schema)) return collectLeaf({ ...spot, path }, schema);
    const toggle = unwrapNullable(schema) === schema ? [] : [presence(spot, path)];
    return [...toggle, ...collect({ ...spot, owner: LIST_OWNERS[key] ?? key, path })];
  });
}

/** Arrays whose members are called by another word. */
const LIST_OWNERS: Record<string, string> = { outline: 'corner' };

function collectList(spot: Spot, items: readonly unknown[]): Field[] {
  return items.flatMap((item, index) => collect({ ...spot, path: [...spot.path, index], part: partName(spot.owner, item, index) }));
}

function partName(owner: string, item: unknown, index: number): string {
  if (owner === 'fittings') return optionLabel((item as { kind: string }).kind);
  return `${PART_NAMES[owner] ?? owner} ${index + 1}`;
}

const PART_NAMES: Record<string, string> = { legs: 'Leg', points: 'Point', heights: 'Height', corner: 'Corner', plateRecord: 'Reading' };

function collectLeaf(spot: Spot, schema: z.ZodMiniType): Field[] {
  const field = leafField(spot, schema, readField(spot.scene.plan, spot.path) as FieldValue);
  return field === null ? [] : [field];
}

function leafField(spot: Spot, schema: z.ZodMiniType, value: FieldValue): Field | null {
  const leaf = leafOf(schema);
  const words = fieldWord(spot.owner, keyOf(spot.path));
  if (leaf === null || words === null) return null;
  const references = referenceOptions(spot.scene, spot.path);
  const chosen = references === null ? leaf : { ...leaf, kind: 'choice' as const, options: references, max: null };
  return { path: spot.path, label: words.label, group: words.group, part: spot.part, value, ...chosen };
}

/** Whether an optional part is there at all. */
function presence({ scene, owner, part }: Spot, path: FieldPath): Field {
  const words = fieldWord(owner, keyOf(path));
  const options = [true, false].map((value) => ({ value, label: optionLabel(value) }));
  return {
    path,
    label: words?.label ?? keyOf(path),
    help: '',
    group: words?.group ?? 'identity',
    part,
    kind: 'toggle',
    of: null,
    value: readField(scene.plan, path) !== null,
    min: null,
    max: null,
    nullable: false,
    options,
  };
}

/** The last word of a path; in a list of plain numbers, the list's. */
function keyOf(path: FieldPath): string {
  return String(path.findLast((key) => typeof key === 'string') ?? '');
}

const isPermanent = (key: string) => key === 'id' || key === 'format' || key === 'version';

const isLeaf = (schema: z.ZodMiniType) => leafOf(schema) !== null && !(unwrapNullable(schema) instanceof z.ZodMiniDiscriminatedUnion);
