import type { SourceDocument } from './sourceDocument';

/** What stands in no document. */
export const NO_DOCUMENTS = {
  arithmetic: {
    title: 'Arithmetic, geometry of the plan, and balances of mass and energy',
    edition: null,
    confidence: 'geometry',
    read: 'follows by itself',
  },
  'common-practice': { title: 'Common practice of the trade', edition: null, confidence: 'practice', read: 'in no document' },
} as const satisfies Record<string, SourceDocument>;
