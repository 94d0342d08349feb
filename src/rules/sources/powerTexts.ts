import type { SourceDocument } from './sourceDocument';

/** Texts on electricity. */
export const POWER_TEXTS = {
  'copper-wire-table': { title: 'Solid copper wire table', edition: null, confidence: 'read', read: 'a textbook source' },
  'electrical-trade-press': { title: 'Trade articles on voltage', edition: null, confidence: 'secondary', read: 'the articles themselves' },
  'faa-ac-43-13': { title: 'FAA AC 43.13-1B CHG 1, Tables 11-7 and 11-8', edition: '9/27/01', confidence: 'read', read: 'the text itself' },
  'load-current-texts': {
    title: 'Current of a load',
    edition: null,
    confidence: 'secondary',
    read: 'a public file; three phases from memory',
  },
} as const satisfies Record<string, SourceDocument>;
