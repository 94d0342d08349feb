import type { Formula } from './formula';
import type { Limit } from './limit';
import type { RuleRecord } from './ruling';

/** What a file of formulas has for the manual. */
export type Entries = readonly EntryRow[];

/** Formulas, limits or rules that stand one after the other. */
export interface EntryRow {
  /** Place of the first of them among all of its kind; steps of ten leave room between. */
  order: number;
  /** Heading of the manual; that of the topic when it is left out. */
  group?: string;
  formulas?: readonly Formula[];
  limits?: readonly Limit[];
  rules?: readonly RuleRecord[];
}
