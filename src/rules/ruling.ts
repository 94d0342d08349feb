import type { FormulaSource } from './record';
import type { Refusal } from './refusal';

/** What a rule says of a case: it holds, or why it does not. */
export type Ruling = { pass: true } | { pass: false; refusal: Refusal };

/** What a rule that is no single number says about itself, for the manual. */
export interface RuleRecord {
  /** Kebab-case and permanent. */
  id: string;
  title: string;
  /** The rule in a sentence. */
  rule: string;
  source: readonly FormulaSource[];
}

/** The ruling, from what stands against the case; null when nothing does. */
export const ruling = (refusal: Refusal | null): Ruling => (refusal === null ? { pass: true } : { pass: false, refusal });
