import { z } from 'zod';

/**
 * Builders of schema fields. One declaration a field carries its unit, range and a sentence for people;
 * the validator, the empty document and the forms all derive from it.
 */

/** What a field says about itself beside its type. */
export interface FieldNote {
  /** Unit of the stored number; `mm` for every length. */
  unit?: 'mm' | 'deg' | 's' | 'C' | 'L' | 'kPa' | 'V' | 'A' | 'kW' | 'ratio' | 'count';
  /** One short sentence for people. */
  text: string;
}

/** Largest coordinate or length that a document may hold: 500 m. */
export const MAX_LENGTH = 500_000;

/** A finite number from `min` to `max`, with its note. */
export function quantity(min: number, max: number, note: FieldNote) {
  return z
    .number()
    .min(min)
    .max(max)
    .meta({ ...note });
}

/** A length of 0 to 500 m, in millimetres. */
export const length = (text: string, min = 0, max = MAX_LENGTH) => quantity(min, max, { unit: 'mm', text });

/** A coordinate, positive or negative, in millimetres. */
export const coordinate = (text: string) => quantity(-MAX_LENGTH, MAX_LENGTH, { unit: 'mm', text });

/** A rotation in degrees, clockwise on the paper. */
export const degrees = (text: string) => quantity(-360, 360, { unit: 'deg', text });

/** A short line of text typed by people. */
export const line = (text: string, max = 200) => z.string().max(max).meta({ text });

/** A permanent id: lower-case letters, digits and hyphens, beginning with a letter. */
export const id = () =>
  z
    .string()
    .max(64)
    .regex(/^[a-z][a-z0-9-]*$/, 'an id is lower-case letters, digits and hyphens, beginning with a letter')
    .refine((value) => !FORBIDDEN_IDS.has(value), 'this word cannot be an id')
    .meta({ text: 'Permanent name' });

const FORBIDDEN_IDS = new Set(['constructor', 'prototype']);
