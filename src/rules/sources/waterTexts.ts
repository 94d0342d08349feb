import type { SourceDocument } from './sourceDocument';

/** Texts on water, heat and dish machines. */
export const WATER_TEXTS = {
  'calculator-pages': {
    title: 'Calculator and reference pages on water pipes',
    edition: null,
    confidence: 'secondary',
    read: 'the pages themselves',
  },
  'energy-star': {
    title: 'ENERGY STAR, commercial dishwashers',
    edition: '1.0 to 3.0',
    confidence: 'read',
    read: 'key product criteria; later versions partly from memory',
  },
  'engineering-toolbox': { title: 'Engineering ToolBox, water pipes', edition: null, confidence: 'read', read: 'the page itself' },
  'epa-watersense': { title: 'EPA, WaterSense at Work, 832-F-12-034', edition: 'Oct 2012', confidence: 'read', read: 'the text itself' },
  'gti-booster': { title: 'Gas Technology Institute, booster heaters', edition: null, confidence: 'read', read: 'the text itself' },
  'hydraulics-texts': { title: 'Hydraulics texts', edition: null, confidence: 'memory', read: 'standard in textbooks' },
  'nist-sp-811': { title: 'NIST SP 811 and Handbook 44', edition: null, confidence: 'secondary', read: 'as restated elsewhere' },
  'nsf-ansi-3': {
    title: 'NSF/ANSI 3, commercial warewashing equipment',
    edition: 'listings of 8 March 2025',
    confidence: 'read',
    read: 'the preface of the listings, and a comparison with NSF/ANSI 184',
  },
  'sanitation-history': {
    title: '“Sanitation History”, slides on heat units',
    edition: '14 Dec 2009',
    confidence: 'read',
    read: 'the slides themselves',
  },
  'year-of-a-machine': { title: 'Yearly figures of a door machine', edition: null, confidence: 'read', read: 'a public file' },
} as const satisfies Record<string, SourceDocument>;
