import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export const BEND_LENGTHS = ['with-length', 'without-length'] as const;

export interface RoundedBendInputs {
  angleDeg: number;
  /** Radius of the centre line over the diameter. */
  radiusRatio: number;
  frictionFactor: number;
  /** Whether the friction along the bend's own centre line is in it. Leave it out where the run's length goes round the bend. */
  length: (typeof BEND_LENGTHS)[number];
}

/** Loss coefficient of a smooth round bend by its angle and radius (Rennels and Hudson). */
export function roundedBend(inputs: RoundedBendInputs): FormulaResult {
  const refusal = findOutOfRange(roundedBendRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { radiusRatio, frictionFactor: f } = inputs;
  const angle = (inputs.angleDeg * Math.PI) / 180;
  const half = Math.sin(angle / 2);
  const straight = inputs.length === 'with-length' ? f * angle * radiusRatio : 0;
  const turning = (0.1 + 2.4 * f) * half;
  const separation = (6.6 * f * (Math.sqrt(half) + half)) / radiusRatio ** ((4 * angle) / Math.PI);
  return { ok: true, value: straight + turning + separation };
}

const library = 'fluids library, tests of fittings: diameter 4.020, radius 20.0, f 0.0163';
const bend = (angleDeg: number): RoundedBendInputs => ({ angleDeg, radiusRatio: 20 / 4.02, frictionFactor: 0.0163, length: 'with-length' });

export const roundedBendRecord: FormulaRecord<RoundedBendInputs> = {
  id: 'bend-rounded',
  title: 'Loss of a rounded bend',
  formula: 'K = f α r/D + (0.10 + 2.4 f) sin(α/2) + 6.6 f (√sin(α/2) + sin(α/2)) / (r/D)^(4α/π)',
  inputs: {
    angleDeg: { text: 'Change of direction', unit: 'deg', min: 0, max: 180 },
    radiusRatio: { text: 'Radius over diameter', unit: 'ratio', min: 0.5, max: 20 },
    frictionFactor: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 0.08 },
    length: { text: 'With the friction along the bend, or without it', choices: BEND_LENGTHS },
  },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 20 },
  source: [
    {
      text: 'Rennels and Hudson, Pipe Flow (2012), as in the fluids library: 0 to 180°, r/D from 0.5',
      documents: ['fluids-library', 'rennels-hudson'],
      confidence: 'read',
    },
  ],
  examples: [
    { kind: 'source', from: library, inputs: bend(90), result: 0.2324838287, tolerance: 1e-9 },
    { kind: 'source', from: library, inputs: bend(45), result: 0.1385820497, tolerance: 1e-9 },
    {
      kind: 'regression',
      from: 'r/D 1.5 at f 0.015',
      inputs: { angleDeg: 90, radiusRatio: 1.5, frictionFactor: 0.015, length: 'without-length' },
      result: 0.164,
      tolerance: 5e-4,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 290, formulas: [formula(roundedBendRecord, roundedBend)] }];
