import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';

export interface RectangleInputs {
  widthM: number;
  heightM: number;
}

/** Diameter in metres of the round duct that loses as much at the same airflow as a rectangular one (Huebscher). */
export function equivalentDiameter(inputs: RectangleInputs): FormulaResult {
  const refusal = findOutOfRange(equivalentDiameterRecord, inputs) ?? tooFlat(inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { widthM, heightM } = inputs;
  return { ok: true, value: (1.3 * (widthM * heightM) ** 0.625) / (widthM + heightM) ** 0.25 };
}

/** Ducts flatter than this are made nowhere, and the form is not meant for them. */
const MOST_ASPECT = 8;
const also = `one side is at most ${MOST_ASPECT} times the other`;

const tooFlat = ({ widthM, heightM }: RectangleInputs) =>
  Math.max(widthM, heightM) > MOST_ASPECT * Math.min(widthM, heightM)
    ? createRefusal(equivalentDiameterRecord, 'duct-too-flat', { widthM, heightM, mostAspect: MOST_ASPECT })
    : null;

const table = 'Equivalent diameters of rectangular ducts, public table after Huebscher: 12 × 12 in is 13.1 in';

export const equivalentDiameterRecord: FormulaRecord<RectangleInputs> = {
  id: 'equivalent-diameter',
  title: 'Equivalent diameter',
  formula: 'De = 1.30 (a b)^0.625 / (a + b)^0.25',
  inputs: {
    widthM: { text: 'Width of the duct', unit: 'm', min: 0.05, max: 3 },
    heightM: { text: 'Height of the duct', unit: 'm', min: 0.05, max: 3 },
  },
  result: { text: 'Diameter of the round duct of equal loss', unit: 'm', min: 0.05, max: 3.4 },
  source: [
    { text: 'SMACNA, equation of Table 14-2, as restated', documents: ['smacna-duct-design'], confidence: 'read' },
    { text: 'Aspect of at most 8 : 1: the usual limit', documents: ['duct-details'], confidence: 'memory' },
  ],
  examples: [
    { kind: 'source', from: table, inputs: { widthM: inches(12), heightM: inches(12) }, result: inches(13.1), tolerance: inches(0.05) },
    {
      kind: 'regression',
      from: '',
      inputs: { widthM: inches(24), heightM: inches(12) },
      result: inches(18.28),
      tolerance: inches(0.01),
    },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 250, formulas: [formula(equivalentDiameterRecord, equivalentDiameter)] }];
