import { z } from 'zod/mini';
import { SIDES, type Side } from '../../catalog';
import { type FieldPath, placeOf, readField } from '../../plan';
import type { Scene } from '../../scene';
import { fieldWords, optionWords } from '../../text';
import type { Field, FieldValue } from './field';
import { groupOf } from './fieldGroups';
import { leafOf } from './leaf';
import { referenceOptions } from './references';
import { childSchema, childValue, objectSchema, schemaAt, unwrapNullable } from './schemaAt';

/** Every editable property from a place of the plan downward, in the order of the schema. */
export function collectFields(scene: Scene, path: FieldPath): Field[] {
  const schema = schemaAt(scene.plan, path);
  return schema === null ? [] : collect({ scene, path, place: placeOf(path), part: null, schema, value: readField(scene.plan, path) });
}

/** A place in the plan under inspection. */
interface Spot {
  scene: Scene;
  path: FieldPath;
  /** The path without the places in lists. */
  place: string;
  part: string | null;
  schema: z.ZodMiniType;
  value: unknown;
}

function collect(spot: Spot): Field[] {
  const { schema, value } = spot;
  const inner = unwrapNullable(schema);
  if (inner instanceof z.ZodMiniArray && inner.def.element instanceof z.ZodMiniEnum) return collectSides(spot, value as Side[]);
  if (inner instanceof z.ZodMiniArray) return collectList(spot, value as unknown[]);
  const object = objectSchema(inner, value);
  return object !== null && value !== null ? collectKeys(spot, Object.keys(object.shape)) : collectLeaf(spot);
}

function collectKeys(spot: Spot, keys: string[]): Field[] {
  return keys.flatMap((key) => {
    const schema = isPermanent(key) ? null : childSchema(spot.schema, spot.value, key);
    if (schema === null) return [];
    const child = { ...spot, path: [...spot.path, key], place: `${spot.place}.${key}`, schema, value: childValue(spot.value, key) };
    if (key === 'kind' || isLeaf(schema)) return collectLeaf(child);
    const toggle = unwrapNullable(schema) === schema ? [] : [toggleField(child, child.value !== null)];
    return [...toggle, ...collect(child)];
  });
}

function collectList(spot: Spot, items: readonly unknown[]): Field[] {
  return items.flatMap((value, index) => {
    const schema = childSchema(spot.schema, items, index);
    const part = partName(keyOf(spot.path), value, index);
    return schema === null ? [] : collect({ ...spot, path: [...spot.path, index], part, schema, value });
  });
}

/** Members of a list are called by their name or by what they are, else they are counted. */
function partName(list: string, item: unknown, index: number): string {
  const { name, kind } = (item ?? {}) as { name?: string; kind?: string };
  if (name || kind) return name || optionWords(kind ?? '');
  return `${PART_NAMES[list] ?? list} ${index + 1}`;
}

const PART_NAMES: Record<string, string> = {
  legs: 'Leg',
  points: 'Point',
  heights: 'Height',
  outline: 'Corner',
  plateRecord: 'Reading',
  controls: 'Position',
  electrical: 'Version',
  fanCurve: 'Point',
  toCorner: 'Step',
  toStraight: 'Step',
};

/** Sides with a door, each to be had or not; none has one at the back unless it says so. */
function collectSides(spot: Spot, had: readonly Side[]): Field[] {
  return SIDES.filter((side) => side !== 'back' || had.includes(side)).map((side) =>
    toggleField({ ...spot, path: [...spot.path, side], place: `${spot.place}.${side}` }, had.includes(side)),
  );
}

function collectLeaf(spot: Spot): Field[] {
  const leaf = leafOf(spot.schema, keyOf(spot.path));
  if (leaf === null) return [];
  const references = referenceOptions(spot.scene, spot.path);
  const chosen = references === null ? leaf : { ...leaf, kind: 'choice' as const, options: references, max: null };
  const { path, place, part, value } = spot;
  const { label, help } = fieldWords(place);
  return [{ path, label, help, group: groupOf(place), part, value: value as FieldValue, ...chosen }];
}

/** Whether an optional part is there at all, or a side is one of those that have a door. */
function toggleField({ path, place, part }: Spot, value: boolean): Field {
  const { label, help } = fieldWords(place);
  const options = [true, false].map((value) => ({ value, label: optionWords(value) }));
  const group = groupOf(place);
  return { path, label, help, group, part, kind: 'toggle', of: null, value, min: null, max: null, nullable: false, options };
}

/** The last word of a path; in a list of plain numbers, the list's. */
function keyOf(path: FieldPath): string {
  return String(path.findLast((key) => typeof key === 'string') ?? '');
}

const isPermanent = (key: string) => key === 'id' || key === 'format' || key === 'version';

const isLeaf = (schema: z.ZodMiniType) => leafOf(schema) !== null && !(unwrapNullable(schema) instanceof z.ZodMiniDiscriminatedUnion);
