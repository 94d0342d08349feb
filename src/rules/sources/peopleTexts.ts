import type { SourceDocument } from './sourceDocument';

/** Texts on people, capacity and queues. */
export const PEOPLE_TEXTS = {
  bodyspace: {
    title: 'Pheasant and Haslegrave, Bodyspace',
    edition: '3rd ed., 2006',
    confidence: 'read',
    read: 'in the Ontario MSD prevention guide',
  },
  'civilian-elbows': { title: 'Elbow heights of civilians', edition: null, confidence: 'secondary', read: 'compiled in a public file' },
  'food-service-layout': {
    title: 'Food-service layout texts',
    edition: null,
    confidence: 'memory',
    read: 'known, but checked against no text',
  },
  grandjean: { title: 'Grandjean, on the height of work', edition: null, confidence: 'secondary', read: 'a handbook in a public file' },
  'niosh-94-110': {
    title: 'DHHS/NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation',
    edition: 'rev. 9/2021',
    confidence: 'read',
    read: 'a page-cited specification, a textbook chapter, and public files',
  },
  'niosh-97-117': {
    title: 'NIOSH 97-117, Elements of Ergonomics Programs',
    edition: null,
    confidence: 'secondary',
    read: 'a figure restated',
  },
  'queueing-texts': { title: 'Queueing texts', edition: null, confidence: 'memory', read: 'standard in textbooks' },
  'rack-rate-article': {
    title: 'Trade magazine on the rate of dish machines',
    edition: null,
    confidence: 'secondary',
    read: 'the article itself',
  },
  'saylor-queueing': { title: 'Saylor course text on queueing', edition: '§4.5', confidence: 'read', read: 'the text itself' },
} as const satisfies Record<string, SourceDocument>;
