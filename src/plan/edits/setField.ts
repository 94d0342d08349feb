import type { Recipe } from '../edit';

/** A place in the document. */
export type FieldPath = readonly (string | number)[];

/** Sets one field. It says nothing when its parent is gone; whether the value fits is for the validation (see `tryEdit`). */
export function setField(path: FieldPath, value: unknown): Recipe {
  return (draft) => {
    const key = path.at(-1);
    const parent = path.slice(0, -1).reduce<unknown>(step, draft);
    if (key === undefined || typeof parent !== 'object' || parent === null || !isOwn(parent, key)) return;
    (parent as Record<string | number, unknown>)[key] = value;
  };
}

/** The value at a place; undefined when there is none. */
export function readField(plan: object, path: FieldPath): unknown {
  return path.reduce<unknown>(step, plan);
}

function step(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null || !isOwn(value, key)) return undefined;
  return (value as Record<string | number, unknown>)[key];
}

/** Only what the document itself holds: never a prototype's. */
const isOwn = (value: object, key: string | number): boolean => Object.hasOwn(value, key);
