import type { Plan } from '../plan';

/** A word that the plan stores where there is a choice, or that word in the fields of one name: `direct`, `waste.direct`. */
export type OptionKey = Options<Omit<Plan, 'format' | 'version'>, ''>;

type Options<T, Field extends string> = T extends readonly (infer Item)[]
  ? Options<Item, Field>
  : T extends object
    ? { [K in keyof T & string]: Options<T[K], K> }[keyof T & string]
    : T extends string | number | boolean
      ? Choice<T, Field>
      : never;

/** Whatever can be typed is no choice. */
type Choice<T extends string | number | boolean, Field extends string> = string extends T
  ? never
  : number extends T
    ? never
    : `${T}` | `${Field}.${T}`;
