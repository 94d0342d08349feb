import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface WareInputs {
  meals: number;
  piecesPerMeal: number;
  piecesPerRack: number;
}

/** Racks that so many meals fill, over whatever time the meals are counted. */
export function racksOfWare(inputs: WareInputs): FormulaResult {
  const refusal = findOutOfRange(racksOfWareRecord, inputs);
  return refusal === null ? { ok: true, value: (inputs.meals * inputs.piecesPerMeal) / inputs.piecesPerRack } : { ok: false, refusal };
}

export const racksOfWareRecord: FormulaRecord<WareInputs> = {
  id: 'racks-of-ware',
  title: 'Racks of ware',
  formula: 'racks = meals · pieces a meal / pieces a rack',
  inputs: {
    meals: { text: 'Meals', unit: 'count', min: 0, max: 1e6 },
    piecesPerMeal: { text: 'Pieces of ware a meal', unit: 'count', min: 0, max: 100 },
    piecesPerRack: { text: 'Pieces in a rack', unit: 'count', min: 1, max: 1000 },
  },
  result: { text: 'Racks', unit: 'count', min: 0, max: 1e8 },
  source: [{ text: 'A count: all pieces over those of one rack', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'A product and a quotient.',
  examples: [
    {
      kind: 'regression',
      from: '120 meals of 6 pieces, 20 a rack: 36 racks',
      inputs: { meals: 120, piecesPerMeal: 6, piecesPerRack: 20 },
      result: 36,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 690, group: 'capacity', formulas: [formula(racksOfWareRecord, racksOfWare)] }];
