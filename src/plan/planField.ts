import type { Side } from '../catalog';
import type { FieldPath } from './edits/setField';
import type { Plan } from './planSchema';

/** A place of the plan that holds one value, without the places in lists: `tables.legs.length`. The doors of a data sheet count side by side. */
export type PlanField = Exclude<Ends<Named>, 'sheets.doors'> | `sheets.doors.${Side}`;

/** A place of the plan, or a part that holds several: `tables.legs`. */
export type PlanPlace = PlanField | Exclude<Parts<Named>, ''>;

/** Format and version are no one's to choose. */
type Named = Omit<Plan, 'format' | 'version'>;

type Ends<T, At extends string = ''> = T extends readonly (infer Item)[]
  ? Ends<Item, At>
  : T extends object
    ? { [K in Key<T>]: Ends<T[K], Join<At, K>> }[Key<T>]
    : At;

type Parts<T, At extends string = ''> = T extends readonly (infer Item)[]
  ? Parts<Item, At>
  : T extends object
    ? At | { [K in Key<T>]: Parts<T[K], Join<At, K>> }[Key<T>]
    : never;

/** An id is a permanent name, which no one changes. */
type Key<T> = Exclude<keyof T & string, 'id'>;

type Join<At extends string, K extends string> = At extends '' ? K : `${At}.${K}`;

/** A path without the places in lists: `tables.legs.length`. */
export function placeOf(path: FieldPath): string {
  return path.filter((key) => typeof key === 'string').join('.');
}
