import { z } from 'zod/mini';
import type { QuantityKind } from '../units';

/**
 * Builders of schema fields. One declaration a field carries its unit and range; the validator, the empty document and the
 * forms all derive from it. What people read of it stands in the text table, by its place in the plan.
 */

/** What a number is measured in. */
export interface FieldNote {
  /** Unit of the stored number; `mm` for every length. */
  unit?: 'mm' | 'deg' | 's' | 'C' | 'L' | 'kPa' | 'V' | 'A' | 'kW' | 'ratio' | 'count';
  /** What it is a quantity of, stored in SI: instead of a unit. */
  of?: QuantityKind;
}

/** What the schema keeps of a field: its unit and its limits, for a text those of its length. */
export interface FieldRule extends FieldNote {
  min?: number;
  max?: number;
}

/** Largest coordinate or length that a document may hold: 500 m. */
export const MAX_LENGTH = 500_000;

/** A finite number from `min` to `max`, in its unit. */
export function quantity(min: number, max: number, note: FieldNote) {
  return z.number().check(z.minimum(min), z.maximum(max), ruled({ ...note, min, max }));
}

/** A quantity of its kind from 0 to `max`, in SI, which may be unknown. */
export const known = (of: QuantityKind, max: number, min = 0) => z.nullable(quantity(min, max, { of }));

/** A length of 0 to 500 m, in millimetres. */
export const length = (min = 0, max = MAX_LENGTH) => quantity(min, max, { unit: 'mm' });

/** A coordinate, positive or negative, in millimetres. */
export const coordinate = () => quantity(-MAX_LENGTH, MAX_LENGTH, { unit: 'mm' });

/** A rotation in degrees, clockwise on the paper. */
export const degrees = () => quantity(-360, 360, { unit: 'deg' });

/** A list of `least` to `most` items. */
export const listOf = <T extends z.ZodMiniType>(item: T, least = 0, most = Number.MAX_SAFE_INTEGER) =>
  z.array(item).check(z.minLength(least), z.maxLength(most));

/** A short line of text typed by people. */
export const line = (max = 200) => z.string().check(z.maxLength(max), ruled({ max }));

/** A permanent id: lower-case letters, digits and hyphens, beginning with a letter. */
export const id = () =>
  z.string().check(
    z.maxLength(64),
    z.regex(/^[a-z][a-z0-9-]*$/, 'an id is lower-case letters, digits and hyphens, beginning with a letter'),
    z.refine((value) => !FORBIDDEN_IDS.has(value), 'this word cannot be an id'),
    ruled({ max: 64 }),
  );

const ruled = (rule: FieldRule) => z.meta({ ...rule });

const FORBIDDEN_IDS = new Set(['constructor', 'prototype']);
