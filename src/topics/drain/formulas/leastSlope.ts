import { type Entries, type FormulaRecord, type FormulaResult, feet, findOutOfRange, formula, inches } from '../../../rules';

export interface LeastSlopeInputs {
  sizeM: number;
}

/** Least fall over length of a drain, by its nominal size. A size between two rows takes the steeper. */
export function leastSlope(inputs: LeastSlopeInputs): FormulaResult {
  const refusal = findOutOfRange(leastSlopeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  if (inputs.sizeM < inches(3) - 1e-9) return { ok: true, value: 1 / 48 };
  return { ok: true, value: inputs.sizeM < inches(8) - 1e-9 ? 1 / 96 : 1 / 192 };
}

const table = 'Chicago Table 18-29-704.1';
const at = (size: number): LeastSlopeInputs => ({ sizeM: inches(size) });

export const leastSlopeRecord: FormulaRecord<LeastSlopeInputs> = {
  id: 'least-slope',
  title: 'Least fall of a drain',
  formula: '¼ in/ft to 2½ in, ⅛ in/ft from 3 to 6 in, 1/16 in/ft from 8 in',
  inputs: { sizeM: { text: 'Nominal size', unit: 'm', min: inches(1.25), max: inches(12) } },
  result: { text: 'Fall over length', unit: 'slope', min: 1 / 192, max: 1 / 48 },
  source: [
    { text: `${table}`, documents: ['chicago-plumbing'], confidence: 'read' },
    { text: 'NSPC 2009, Appendix K: 2 in and smaller ¼ in/ft, 3 in and larger ⅛ in/ft', documents: ['nspc'], confidence: 'read' },
  ],
  examples: [
    { kind: 'source', from: `${table}: 2½ in`, inputs: at(2.5), result: 1 / 48, tolerance: 0 },
    { kind: 'source', from: `${table}: 3 in`, inputs: at(3), result: 1 / 96, tolerance: 0 },
    { kind: 'source', from: `${table}: 6 in`, inputs: at(6), result: 1 / 96, tolerance: 0 },
    { kind: 'source', from: `${table}: 8 in`, inputs: at(8), result: 1 / 192, tolerance: 0 },
  ],
};

export interface FallInputs {
  lengthM: number;
  slope: number;
}

/** How far a table, a floor or a drain falls over a length, in metres. */
export function fallOver(inputs: FallInputs): FormulaResult {
  const refusal = findOutOfRange(fallOverRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.lengthM * inputs.slope } : { ok: false, refusal };
}

export const fallOverRecord: FormulaRecord<FallInputs> = {
  id: 'fall-over',
  title: 'Fall over a length',
  formula: 'h = L · s; ⅛ in/ft is 1/96, ¼ in/ft is 1/48',
  inputs: {
    lengthM: { text: 'Length', unit: 'm', min: 0, max: 500 },
    slope: { text: 'Fall over length', unit: 'slope', min: 0, max: 0.2 },
  },
  result: { text: 'Fall', unit: 'm', min: 0, max: 100 },
  source: [{ text: 'Arithmetic; specifications call ⅛ in/ft 1 % and ¼ in/ft 2 %', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'A product.',
  examples: [
    {
      kind: 'regression',
      from: '60 in at ⅛ in/ft: 0.625 in',
      inputs: { lengthM: feet(5), slope: 1 / 96 },
      result: inches(0.625),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: '60 in at ¼ in/ft: 1.25 in',
      inputs: { lengthM: feet(5), slope: 1 / 48 },
      result: inches(1.25),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1060, formulas: [formula(leastSlopeRecord, leastSlope), formula(fallOverRecord, fallOver)] }];
