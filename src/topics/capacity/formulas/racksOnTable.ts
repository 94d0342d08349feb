import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';

export interface TableRacksInputs {
  lengthM: number;
  pitchM: number;
}

/** Whole racks that stand one behind the other on a clear length of table. 60 in hold three at 20 in, two at 20½ in. */
export function racksOnTable(inputs: TableRacksInputs): FormulaResult {
  const refusal = findOutOfRange(racksOnTableRecord, inputs);
  return refusal === null ? { ok: true, value: Math.floor(inputs.lengthM / inputs.pitchM + 1e-9) } : { ok: false, refusal };
}

const slide = 'UFGS 11400A §2.4.2.2: rack slide 20½ in square, guides 20 in apart';
const at = (length: number, pitch: number): TableRacksInputs => ({ lengthM: inches(length), pitchM: inches(pitch) });

export const racksOnTableRecord: FormulaRecord<TableRacksInputs> = {
  id: 'racks-on-table',
  title: 'Racks on a table',
  formula: 'n = whole part of L / pitch',
  inputs: {
    lengthM: { text: 'Clear length', unit: 'm', min: 0, max: 100 },
    pitchM: { text: 'Length that a rack takes', unit: 'm', min: 0.4, max: 0.8 },
  },
  result: { text: 'Whole racks', unit: 'count', min: 0, max: 250 },
  source: [{ text: slide, documents: ['ufgs-11400'], confidence: 'read' }],
  unprinted: 'The specification gives the sizes; the count is worked out here.',
  examples: [
    { kind: 'regression', from: '60 in at 20 in', inputs: at(60, 20), result: 3, tolerance: 0 },
    { kind: 'regression', from: '60 in at 20½ in', inputs: at(60, 20.5), result: 2, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 700, formulas: [formula(racksOnTableRecord, racksOnTable)] }];
