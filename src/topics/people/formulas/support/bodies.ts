import type { FormulaSource } from '../../../../rules';

/** Measures in metres that the layout holds tables and shelves against. */
export interface BodyMeasures {
  statureM: number;
  eyeM: number;
  shoulderM: number;
  elbowM: number;
  fingertipM: number;
  /** Wall to the tip of the index finger. */
  reachM: number;
  extendedReachM: number;
}

/** Barefoot, standing. These women are taller than civilians: a lower elbow is a fair bound for a dish crew. */
export const BODIES: Readonly<Record<'small-woman' | 'tall-man', BodyMeasures>> = {
  'small-woman': { statureM: 1.612, eyeM: 1.501, shoulderM: 1.23, elbowM: 0.975, fingertipM: 0.551, reachM: 0.677, extendedReachM: 0.735 },
  'tall-man': { statureM: 1.878, eyeM: 1.756, shoulderM: 1.553, elbowM: 1.16, fingertipM: 0.724, reachM: 0.886, extendedReachM: 0.942 },
};

/** Lower bound of the elbow for civilians, in metres. */
export const CIVILIAN_ELBOW = 0.93;

export const CIVILIAN_ELBOW_SOURCE: FormulaSource = {
  text: 'Elbow of short civilian women, compiled in a public file',
  documents: ['civilian-elbows'],
  confidence: 'secondary',
};

export const BODIES_SOURCE: FormulaSource = {
  text: 'MIL-STD-1472G App. B, 5th percentile female and 95th male, reprinted in NUREG-0700 Rev. 3, Table 11.4',
  documents: ['mil-std-1472'],
  confidence: 'read',
};
