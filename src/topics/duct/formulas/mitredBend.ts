import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface MitredBendInputs {
  angleDeg: number;
}

/** Loss coefficient of a bend with one mitred joint (Rennels and Hudson). */
export function mitredBend(inputs: MitredBendInputs): FormulaResult {
  const refusal = findOutOfRange(mitredBendRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const half = Math.sin((inputs.angleDeg * Math.PI) / 360);
  return { ok: true, value: 0.42 * half + 2.56 * half ** 3 };
}

const library = 'fluids library, tests of fittings';

export const mitredBendRecord: FormulaRecord<MitredBendInputs> = {
  id: 'bend-mitred',
  title: 'Loss of a mitred bend',
  formula: 'K = 0.42 sin(α/2) + 2.56 sin³(α/2)',
  inputs: { angleDeg: { text: 'Change of direction', unit: 'deg', min: 0, max: 150 } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 2.8 },
  source: [
    {
      text: 'Rennels and Hudson, Pipe Flow (2012), as in the fluids library: 0 to 150°',
      documents: ['fluids-library', 'rennels-hudson'],
      confidence: 'read',
    },
  ],
  examples: [
    { kind: 'source', from: library, inputs: { angleDeg: 90 }, result: 1.20208153, tolerance: 1e-8 },
    { kind: 'source', from: library, inputs: { angleDeg: 45 }, result: 0.30419633, tolerance: 1e-8 },
    { kind: 'source', from: library, inputs: { angleDeg: 150 }, result: 2.71281477, tolerance: 1e-8 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 310, formulas: [formula(mitredBendRecord, mitredBend)] }];
