import type { SourceDocument } from './sourceDocument';

/** Rules of one county or city, and what was read of one place. */
export const LOCAL_RULES = {
  'california-health-code': {
    title: 'California Health and Safety Code, retail food',
    edition: null,
    confidence: 'read',
    read: 'the text itself',
  },
  'california-hot-water': {
    title: 'California Conference of Directors of Environmental Health, hot-water guidelines',
    edition: null,
    confidence: 'read',
    read: 'the table of demands',
  },
  'california-plan-check': {
    title: 'California county plan-check guides',
    edition: null,
    confidence: 'memory',
    read: 'known, but checked against no text',
  },
  'chicago-plumbing': { title: 'Chicago Plumbing Code', edition: 'amended 2022', confidence: 'read', read: 'the text itself' },
  'chico-and-ferris': { title: 'Chico TX and Ferris TX, plumbing codes', edition: null, confidence: 'read', read: 'the texts themselves' },
  'city-grease-interceptor': {
    title: 'Grease interceptor formula of one city',
    edition: null,
    confidence: 'secondary',
    read: 'as restated elsewhere',
  },
  'city-ordinance-rinse': { title: 'A city ordinance on dish machines', edition: null, confidence: 'read', read: 'the text itself' },
  'grandview-heights': { title: 'Grandview Heights OH, Code 1721.12', edition: null, confidence: 'read', read: 'the text itself' },
  'marin-county': {
    title: 'Marin County CA, General Construction and Equipment Requirements',
    edition: null,
    confidence: 'read',
    read: 'the text itself',
  },
  'monterey-pc-hwh': {
    title: 'Monterey County CA, form PC-HWH, hot-water sizing',
    edition: null,
    confidence: 'read',
    read: 'the form itself',
  },
  'municipal-plumbing': {
    title: 'A municipal plumbing code',
    edition: 'about 1965',
    confidence: 'read',
    read: 'the text itself, ecode360',
  },
  'orono-letter': { title: 'City of Orono MN, plan review letter', edition: '6 Apr 2000', confidence: 'read', read: 'the letter itself' },
  'plan-reviewers': { title: 'Plan reviewers on make-up air', edition: null, confidence: 'secondary', read: 'as restated elsewhere' },
  'redwood-city': { title: 'Redwood City CA, municipal code', edition: null, confidence: 'read', read: 'the text itself' },
  'san-joaquin-ehd-16-01': {
    title: 'San Joaquin County CA, plan check guide, form EHD 16-01',
    edition: 'rev. 7/5/17',
    confidence: 'read',
    read: 'the form, and filings of it',
  },
  'sonoma-county': {
    title: 'Sonoma County CA, floor plan and lighting guidelines',
    edition: null,
    confidence: 'read',
    read: 'the text itself',
  },
  'unnamed-plan-review-guide': {
    title: 'A guide to plan review whose origin is not named',
    edition: null,
    confidence: 'secondary',
    read: 'restated without its origin',
  },
} as const satisfies Record<string, SourceDocument>;
