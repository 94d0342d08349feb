import type { PlanField } from '../plan';

/** What people read of a field. */
export interface FieldWords {
  readonly label: string;
  /** A sentence that says what is meant; empty where the label and the choices say it. */
  readonly help: string;
}

/** The length of a wall is no field of the plan, but is typed as if it were one. */
export type FieldKey = PlanField | 'room.outline.length';

/** The words of every field in one language: a field without words, and words of no field, do not compile. */
export type FieldWording<K extends FieldKey = FieldKey> = { readonly [Key in K]: FieldWords };

/** A field to type in: its sentence is its label, or says more. */
export const entry = (label: string, help = label): FieldWords => ({ label, help });

/** A field whose sentence begins with its label. */
export const titled = (label: string, help: string): FieldWords => ({ label, help: `${label}: ${help}` });

/** A field to choose in, that needs no sentence. */
export const choice = (label: string): FieldWords => ({ label, help: '' });
