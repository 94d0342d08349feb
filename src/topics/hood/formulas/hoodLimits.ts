import { type Entries, type FormulaSource, feet, forReference, limit, type SourceKey } from '../../../rules';
import { toSI } from '../../../units';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const secondary = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'secondary' });

const washington = read('Wash. WAC 51-11C-40377, C403.7.7.1', 'wac-51-11c');

const noncanopy = secondary('IMC 2018 (Maryland), 507.4.2, as in a code summary', 'imc');

export const CAVITY_AIR = limit('cavity-air', 'Part of the exhaust blown into the hood', 'share', { max: 0.1 }, washington);

export const UNLISTED_HOOD_EXHAUST = limit(
  'unlisted-hood-exhaust',
  'Type II hood free of the energy code’s listing',
  'm3/s',
  { max: toSI(1000, 'cfm') },
  washington,
);

/** "About" three quarters at the machine, the rest at the ceiling. */
export const EXHAUST_AT_MACHINES = limit(
  'exhaust-at-machines',
  'Part of the exhaust drawn at the dishwashers',
  'share',
  { min: 0.75 },
  read('UFC 3-410-01FA (15 May 2003), 4-10.1, superseded', 'ufc-3-410-01fa'),
);

export const NONCANOPY_HEIGHT = forReference(
  limit('noncanopy-height', 'Hood without a canopy above the surface', 'm', { max: feet(3) }, noncanopy),
);

export const NONCANOPY_SETBACK = forReference(
  limit('noncanopy-setback', 'Hood without a canopy behind the edge', 'm', { max: feet(1) }, noncanopy),
);

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 80, limits: [CAVITY_AIR, UNLISTED_HOOD_EXHAUST] },
  { order: 110, limits: [EXHAUST_AT_MACHINES] },
  { order: 240, limits: [NONCANOPY_HEIGHT, NONCANOPY_SETBACK] },
];
