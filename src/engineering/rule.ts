import type { FormulaSource } from './record';

/** What a rule says of a case: it holds, or why it does not. */
export type Ruling = { pass: true } | { pass: false; reason: string };

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
export const ruling = (against: string | null): Ruling => (against === null ? { pass: true } : { pass: false, reason: against });
