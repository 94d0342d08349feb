import { z } from 'zod/mini';
import type { QuantityKind } from '../units';

/**
 * Builders of schema fields. One declaration a field carries its unit, range and a sentence for people;
 * the validator, the empty document and the forms all derive from it.
 */

/** What a field says about itself beside its type. */
export interface FieldNote {
  /** Unit of the stored number; `mm` for every length. */
  unit?: 'mm' | 'deg' | 's' | 'C' | 'L' | 'kPa' | 'V' | 'A' | 'kW' | 'ratio' | 'count';
  /** What it is a quantity of, stored in SI: instead of a unit. */
  of?: QuantityKind;
  /** One short sentence for people. */
  text: string;
}

/** What the schema keeps of a field: its note and its limits, for a text those of its length. */
export interface FieldRule extends FieldNote {
  min?: number;
  max?: number;
}

/** Largest coordinate or length that a document may hold: 500 m. */
export const MAX_LENGTH = 500_000;

/** A finite number from `min` to `max`, with its note. */
export function quantity(min: number, max: number, note: FieldNote) {
  return z.number().check(z.minimum(min), z.maximum(max), ruled({ ...note, min, max }));
}

/** A quantity of its kind from 0 to `max`, in SI, which may be unknown. */
export const known = (of: QuantityKind, text: string, max: number, min = 0) => z.nullable(quantity(min, max, { of, text }));

/** A length of 0 to 500 m, in millimetres. */
export const length = (text: string, min = 0, max = MAX_LENGTH) => quantity(min, max, { unit: 'mm', text });

/** A coordinate, positive or negative, in millimetres. */
export const coordinate = (text: string) => quantity(-MAX_LENGTH, MAX_LENGTH, { unit: 'mm', text });

/** A rotation in degrees, clockwise on the paper. */
export const degrees = (text: string) => quantity(-360, 360, { unit: 'deg', text });

/** A list of `least` to `most` items. */
export const listOf = <T extends z.ZodMiniType>(item: T, least = 0, most = Number.MAX_SAFE_INTEGER) =>
  z.array(item).check(z.minLength(least), z.maxLength(most));

/** A short line of text typed by people. */
export const line = (text: string, max = 200) => z.string().check(z.maxLength(max), ruled({ text, max }));

/** A permanent id: lower-case letters, digits and hyphens, beginning with a letter. */
export const id = () =>
  z.string().check(
    z.maxLength(64),
    z.regex(/^[a-z][a-z0-9-]*$/, 'an id is lower-case letters, digits and hyphens, beginning with a letter'),
    z.refine((value) => !FORBIDDEN_IDS.has(value), 'this word cannot be an id'),
    ruled({ text: 'Permanent name', max: 64 }),
  );

/** A choice, or an object that may be missing, with its sentence. */
export const noted = <T extends z.ZodMiniType>(schema: T, text: string): T => schema.check(ruled({ text }));

const ruled = (rule: FieldRule) => z.meta({ ...rule });

const FORBIDDEN_IDS = new Set(['constructor', 'prototype']);
