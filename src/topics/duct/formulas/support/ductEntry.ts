import type { FormulaSource } from '../../../../rules';

/** How air comes into a duct, with the coefficient on the duct's velocity pressure. */
interface Entry {
  coefficient: number;
  source: FormulaSource;
}

const acgih = (): FormulaSource => ({
  text: `ACGIH Industrial Ventilation, 24th ed. 2001, hood entry losses`,
  documents: ['acgih-industrial-ventilation'],
  confidence: 'secondary',
});

/** Entries of one value. Where sources differ the larger stands: flush and sharp is 0.50 in four of them and 0.57 in Rennels. */
export const DUCT_ENTRIES = {
  'plain-end': { coefficient: 0.93, source: acgih() },
  'flanged-end': { coefficient: 0.49, source: acgih() },
  'bellmouth-hood': { coefficient: 0.04, source: acgih() },
  'tapered-take-off': { coefficient: 0.4, source: acgih() },
  'straight-take-off': { coefficient: 0.65, source: acgih() },
  'flush-sharp': {
    coefficient: 0.5,
    source: { text: 'Idelchik and others, as in the fluids library', documents: ['fluids-library', 'idelchik'], confidence: 'read' },
  },
  'flush-sharp-stricter': {
    coefficient: 0.57,
    source: { text: 'Rennels, as in the fluids library', documents: ['fluids-library', 'rennels-hudson'], confidence: 'read' },
  },
} satisfies Record<string, Entry>;
