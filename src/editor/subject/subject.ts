import type { FieldPath, ItemKind, Plan } from '../../plan';

/** What can be chosen on the canvas or in the list. A corner stands for the wall that begins there. */
export type SubjectKind = Exclude<ItemKind, 'sheet'>;

export interface Subject {
  readonly id: string;
  readonly kind: SubjectKind;
  /** Where it stands in the plan document. */
  readonly path: FieldPath;
}

const known = new WeakMap<Plan, ReadonlyMap<string, Subject>>();

/** The thing with this id; null where the plan has none. */
export function findSubject(plan: Plan, id: string): Subject | null {
  return subjectsOf(plan).get(id) ?? null;
}

/** Everything of the plan that can be chosen, by id. */
export function subjectsOf(plan: Plan): ReadonlyMap<string, Subject> {
  const found = known.get(plan) ?? collect(plan);
  known.set(plan, found);
  return found;
}

/** The ids that the plan still has, in their order; the same list where all of them stand. */
export function existingIds(plan: Plan, ids: readonly string[]): readonly string[] {
  const subjects = subjectsOf(plan);
  return ids.every((id) => subjects.has(id)) ? ids : ids.filter((id) => subjects.has(id));
}

function collect(plan: Plan): Map<string, Subject> {
  const subjects = new Map<string, Subject>();
  const add = (kind: SubjectKind, base: FieldPath, items: readonly { id: string }[]) =>
    items.forEach(({ id }, index) => subjects.set(id, { id, kind, path: [...base, index] }));
  add('corner', ['room', 'outline'], plan.room.outline);
  add('opening', ['room', 'openings'], plan.room.openings);
  add('column', ['room', 'columns'], plan.room.columns);
  add('floor-drain', ['room', 'floorDrains'], plan.room.floorDrains);
  add('stub', ['room', 'stubs'], plan.room.stubs);
  add('machine', ['machines'], plan.machines);
  add('table', ['tables'], plan.tables);
  plan.tables.forEach((table, index) => add('fitting', ['tables', index, 'fittings'], table.fittings));
  add('thing', ['things'], plan.things);
  add('hood', ['hoods'], plan.hoods);
  add('run', ['runs'], plan.runs);
  return subjects;
}
