import type { FieldPath, Plan } from '../../plan';
import type { Scene } from '../../scene';
import { findSubject, type Subject, subjectsOf } from '../subject/subject';
import { collectFields } from './collectFields';
import type { Field } from './field';
import { isAsked } from './isAsked';
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
 * the plan by its section, a data sheet of the plan by its id. An unknown id has none.
 */
export function fieldsFor(plan: Plan, scene: Scene, id: string): readonly Field[] {
  const cards = known.get(scene) ?? new Map<string, readonly Field[]>();
  known.set(scene, cards);
  const fields = cards.get(id) ?? collectCard(plan, scene, id);
  cards.set(id, fields);
  return fields;
}

/** Typing into a field asks for its card several times. */
const known = new WeakMap<Scene, Map<string, readonly Field[]>>();

function collectCard(plan: Plan, scene: Scene, id: string): Field[] {
  const section = SECTIONS.find((name) => name === id);
  if (section !== undefined) return sectionFields(scene, section);
  const subject = findSubject(plan, id);
  if (subject === null) return sheetFields(scene, id);
  return subject.kind === 'corner' ? wallFields(plan, subject.id) : subjectFields(scene, subject);
}

/** The field at a place of the plan; null where nothing can be typed. */
export function fieldAt(plan: Plan, scene: Scene, path: FieldPath): Field | null {
  const owner = [...subjectsOf(plan).values()].find((subject) => subject.kind !== 'fitting' && isWithin(path, subject.path));
  const id = path[0] === 'sheets' ? plan.sheets[Number(path[1])]?.id : owner?.id;
  const fields = fieldsFor(plan, scene, id ?? `@${path[0]}`);
  return fields.find((field) => field.path.length === path.length && isWithin(path, field.path)) ?? null;
}

const isWithin = (path: FieldPath, base: FieldPath) => base.every((key, index) => path[index] === key);

/** The fields of a thing that have a meaning as it is; those of its fittings stand on its table's card too. */
function subjectFields(scene: Scene, { path }: Subject): Field[] {
  return collectFields(scene, path).filter((field) => isAsked(scene.plan, field.path));
}

/** The room's card holds its corners; what stands in its walls has cards of its own. */
function sectionFields(scene: Scene, section: Section): Field[] {
  const name = section.slice(1);
  return collectFields(scene, [name]).filter(({ path }) => path[0] !== 'room' || !OWN_CARDS.includes(String(path[1])));
}

const OWN_CARDS = ['openings', 'columns', 'floorDrains', 'stubs'];

/** A data sheet of the user's own, from its name to its last step. */
function sheetFields(scene: Scene, id: string): Field[] {
  const index = scene.plan.sheets.findIndex((sheet) => sheet.id === id);
  return index < 0 ? [] : collectFields(scene, ['sheets', index]);
}
