import type { Source } from '../../../../rules';
import type { ExhaustRule } from '../../formulas/support/hoodExhaust';

/** A rule of hood exhaust: where it stands, and whether it counts everywhere. */
export interface ExhaustStanding {
  source: Source;
  /** Holds today, of every hood over a dishwasher: not superseded, and no manual of one kind of building. */
  isInForce: boolean;
}

const published = (document: string, section: string, confidence: 'read' | 'secondary'): Source => ({
  kind: 'published',
  document,
  section,
  confidence,
});

const HOSPITAL = published('VA HVAC design manual (hospitals)', '3.12.8: 50 to 100 cfm to a square foot of hood', 'read');
const OLDER = published('International Mechanical Code 2000, superseded', '507.13, low-temperature canopy', 'secondary');

/** Those that can govern; the capture formula is a way of design and no code. */
export const EXHAUST_STANDING: Readonly<Record<Exclude<ExhaustRule, 'capture'>, ExhaustStanding>> = {
  length: {
    source: published(
      'International Mechanical Code',
      '507.3.4.2 (507.5.5 in 2015–2021): 100 cfm to a foot of hood over a dishwasher',
      'secondary',
    ),
    isInForce: true,
  },
  face: {
    source: published('UFC 3-410-01FA (15 May 2003), superseded', '4-10.1: 50 fpm at the opening of a canopy', 'read'),
    isInForce: false,
  },
  'area-least': { source: HOSPITAL, isInForce: false },
  'area-most': { source: HOSPITAL, isInForce: false },
  'older-area': { source: OLDER, isInForce: false },
  'older-perimeter': {
    source: OLDER,
    isInForce: false,
  },
};
