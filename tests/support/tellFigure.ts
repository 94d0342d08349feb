import type { Figure } from '../../src/rules';

/** Every field, also those that are told late: the compiler sees that none is left out. */
const IS_FIELD: Record<keyof Figure, true> = {
  id: true,
  figure: true,
  part: true,
  title: true,
  group: true,
  unit: true,
  subjects: true,
  value: true,
  ask: true,
  refusal: true,
  how: true,
  notes: true,
};
const FIELDS = Object.keys(IS_FIELD) as (keyof typeof IS_FIELD)[];

/** Everything that a figure tells, as plain fields. */
export const tellFigure = (figure: Figure) => Object.fromEntries(FIELDS.map((field) => [field, figure[field]]));
