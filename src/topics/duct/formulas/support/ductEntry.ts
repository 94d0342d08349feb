import type { FormulaSource } from '../../../../rules';

/** How air comes into a duct, with the coefficient on the duct's velocity pressure. */
interface Entry {
  coefficient: number;
  source: FormulaSource;
}

const acgih = (row: string): FormulaSource => ({
  text: `ACGIH Industrial Ventilation, 24th ed. 2001, hood entry losses (${row})`,
  confidence: 'secondary',
});

/** Entries of one value. Where sources differ the larger stands: flush and sharp is 0.50 in four of them and 0.57 in Rennels. */
export const DUCT_ENTRIES = {
  'plain-end': { coefficient: 0.93, source: acgih('A-X1') },
  'flanged-end': { coefficient: 0.49, source: acgih('A-X2') },
  'bellmouth-hood': { coefficient: 0.04, source: acgih('A-X3') },
  'tapered-take-off': { coefficient: 0.4, source: acgih('A-X4') },
  'straight-take-off': { coefficient: 0.65, source: acgih('A-X4') },
  'flush-sharp': { coefficient: 0.5, source: { text: 'Idelchik and others, as in the fluids library (A-X5)', confidence: 'read' } },
  'flush-sharp-stricter': { coefficient: 0.57, source: { text: 'Rennels, as in the fluids library (A-X5)', confidence: 'read' } },
} satisfies Record<string, Entry>;
