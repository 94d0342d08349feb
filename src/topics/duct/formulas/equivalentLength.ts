import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { BEND_RULES, type BendRule, bendFactor } from './bendFactor';

export interface EquivalentLengthInputs {
  straightM: number;
  /** What one 90° elbow counts as. */
  elbowM: number;
  bendsDeg: readonly number[];
  rule: BendRule;
}

/**
 * Equivalent length of a run in metres: its straight length in three dimensions and an allowance
 * for each bend, by the bend's angle. A machine's data sheet gives the limit and the allowance.
 */
export function equivalentLength(inputs: EquivalentLengthInputs): FormulaResult {
  const refusal = findOutOfRange(equivalentLengthRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const elbows = elbowCount(inputs.bendsDeg, inputs.rule);
  return elbows.ok ? { ok: true, value: inputs.straightM + inputs.elbowM * elbows.value } : elbows;
}

/**
 * Bends as a number of 90° elbows (0.6 for one of 45° by the table). A duct that falls toward its drain meets its elbows a degree or
 * two short of square: by the stricter rule each still counts as the elbow that it is made of.
 */
export function elbowCount(bendsDeg: readonly number[], rule: BendRule): FormulaResult {
  let sum = 0;
  for (const angleDeg of bendsDeg) {
    const factor = bendFactor({ angleDeg: rule === 'stricter' ? asMade(angleDeg) : angleDeg, rule });
    if (!factor.ok) return factor;
    sum += factor.value;
  }
  return { ok: true, value: sum };
}

/** Elbows as they are made, degrees. */
const MADE = [30, 45, 60, 90] as const;
/** So far a duct's fall takes a bend out of its elbow: twice ¼ in to a foot, and room for what is laid by eye. */
const SLACK_DEG = 3;

/** The angle of the elbow of which a bend falls a little short; else its own. */
const asMade = (angleDeg: number): number => MADE.find((made) => angleDeg < made && angleDeg >= made - SLACK_DEG) ?? angleDeg;

const practice = 'Common practice for direct vents: each elbow counts as 10 ft (3.048 m) of at most 50 ft (15.24 m) of run';

export const equivalentLengthRecord: FormulaRecord<EquivalentLengthInputs> = {
  id: 'equivalent-length',
  title: 'Equivalent length',
  formula: 'L_eq = L + a · Σ k(angle)',
  inputs: {
    straightM: { text: 'Straight length in three dimensions', unit: 'm', min: 0, max: 50_000 },
    elbowM: { text: 'Allowance for one 90° elbow', unit: 'm', min: 0, max: 500 },
    bendsDeg: {
      text: 'Change of direction at each bend; by the stricter rule what is up to 3° short of an elbow of 30, 45, 60 or 90° counts as that elbow',
      unit: 'deg',
      min: 0,
      max: 180,
    },
    rule: { text: 'How a bend counts beside a 90° elbow', choices: BEND_RULES },
  },
  result: { text: 'Equivalent length', unit: 'm', min: 0, max: 110_000 },
  source: [{ text: practice, documents: ['common-practice'], confidence: 'practice' }],
  examples: [
    {
      kind: 'source',
      from: `${practice}; 30 ft and two elbows are 50 ft`,
      inputs: { straightM: 9.144, elbowM: 3.048, bendsDeg: [90, 90], rule: 'stricter' },
      result: 15.24,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: '6 m, one bend of 90° and one of 45° by the table: 6 + 3 × 1.6',
      inputs: { straightM: 6, elbowM: 3, bendsDeg: [90, 45], rule: 'k-table' },
      result: 10.8,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: 'the same by proportion: 6 + 3 × 1.5',
      inputs: { straightM: 6, elbowM: 3, bendsDeg: [90, 45], rule: 'proportional' },
      result: 10.5,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: '6 m of a run that falls ¼ in to a foot, two elbows of 88.8°: 6 + 3 × 2',
      inputs: { straightM: 6, elbowM: 3, bendsDeg: [88.8, 88.8], rule: 'stricter' },
      result: 12,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 10, formulas: [formula(equivalentLengthRecord, equivalentLength)] }];
