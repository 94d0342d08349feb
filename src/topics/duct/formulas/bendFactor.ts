import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

/** How a bend counts beside a 90° elbow. */
export const BEND_RULES = ['stricter', 'k-table', 'proportional'] as const;
export type BendRule = (typeof BEND_RULES)[number];

export interface BendInputs {
  angleDeg: number;
  rule: BendRule;
}

/**
 * What a bend of an angle counts as, as a part of a 90° elbow (ratio, 0 to 2). The table and the
 * habit of proportion disagree (45° is 0.60 or 0.50); `stricter` takes the larger at each angle.
 */
export function bendFactor(inputs: BendInputs): FormulaResult {
  const refusal = findOutOfRange(bendFactorRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { angleDeg, rule } = inputs;
  const proportional = angleDeg / 90;
  if (rule === 'proportional') return { ok: true, value: proportional };
  const table = interpolate(angleDeg);
  return { ok: true, value: rule === 'k-table' ? table : Math.max(table, proportional) };
}

/** Angle and factor. The source begins at 30°; 0° is added, where nothing bends. */
const K_TABLE: readonly (readonly [number, number])[] = [
  [0, 0],
  [30, 0.45],
  [45, 0.6],
  [60, 0.78],
  [90, 1],
  [180, 1.4],
];

function interpolate(angleDeg: number): number {
  const next = Math.max(
    1,
    K_TABLE.findIndex(([angle]) => angleDeg <= angle),
  );
  const [a0, k0] = K_TABLE[next - 1] ?? [0, 0];
  const [a1, k1] = K_TABLE[next] ?? [180, 1.4];
  return k0 + ((k1 - k0) * (angleDeg - a0)) / (a1 - a0);
}

const table = 'SMACNA HVAC Systems Duct Design, 4th ed., Table A-7 note 1';

export const bendFactorRecord: FormulaRecord<BendInputs> = {
  id: 'bend-factor',
  title: 'Bend factor',
  formula: 'K(angle), straight lines between the points of the table · angle / 90° · the larger of the two',
  inputs: {
    angleDeg: { text: 'Change of direction; 0 is straight on', unit: 'deg', min: 0, max: 180 },
    rule: { text: 'Which of the two rules, or the larger', choices: BEND_RULES },
  },
  result: { text: 'Part of a 90° elbow', unit: 'ratio', min: 0, max: 2 },
  source: [
    { text: `${table}: angle factors of round bends`, documents: ['smacna-duct-design'], confidence: 'secondary' },
    {
      text: 'Industrial-ventilation habit: 60° is 2/3, 45° is 1/2, 30° is 1/3 of the 90° loss',
      documents: ['acgih-industrial-ventilation'],
      confidence: 'secondary',
    },
  ],
  examples: [
    { kind: 'source', from: table, inputs: { angleDeg: 30, rule: 'k-table' }, result: 0.45, tolerance: 0 },
    { kind: 'source', from: table, inputs: { angleDeg: 45, rule: 'k-table' }, result: 0.6, tolerance: 0 },
    { kind: 'source', from: table, inputs: { angleDeg: 60, rule: 'k-table' }, result: 0.78, tolerance: 0 },
    { kind: 'source', from: table, inputs: { angleDeg: 90, rule: 'k-table' }, result: 1, tolerance: 0 },
    { kind: 'source', from: table, inputs: { angleDeg: 180, rule: 'k-table' }, result: 1.4, tolerance: 1e-12 },
    { kind: 'source', from: '', inputs: { angleDeg: 60, rule: 'proportional' }, result: 2 / 3, tolerance: 1e-12 },
    { kind: 'source', from: '', inputs: { angleDeg: 45, rule: 'proportional' }, result: 0.5, tolerance: 0 },
    { kind: 'source', from: '', inputs: { angleDeg: 30, rule: 'proportional' }, result: 1 / 3, tolerance: 1e-12 },
    { kind: 'regression', from: 'the larger of 0.60 and 0.50', inputs: { angleDeg: 45, rule: 'stricter' }, result: 0.6, tolerance: 0 },
    { kind: 'regression', from: 'the larger of 1.40 and 2.00', inputs: { angleDeg: 180, rule: 'stricter' }, result: 2, tolerance: 0 },
    { kind: 'regression', from: 'half way from 0.78 to 1.00', inputs: { angleDeg: 75, rule: 'k-table' }, result: 0.89, tolerance: 1e-12 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 20, formulas: [formula(bendFactorRecord, bendFactor)] }];
