import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface CordInputs {
  cordM: number;
  wayM: number;
}

/** What is left of a cord after its way, in metres; below 0 the cord is too short. */
export function cordReserve(inputs: CordInputs): FormulaResult {
  const refusal = findOutOfRange(cordReserveRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.cordM - inputs.wayM } : { ok: false, refusal };
}

const practice = 'Common practice: about 10 ft (3.048 m) of cord come with the fan of a direct vent; longer is field wiring';

export const cordReserveRecord: FormulaRecord<CordInputs> = {
  id: 'cord-reserve',
  title: 'Cord reserve',
  formula: 'r = cord − way',
  inputs: {
    cordM: { text: 'Length of the cord', unit: 'm', min: 0, max: 500 },
    wayM: { text: 'Way of the cord from the fan to the machine', unit: 'm', min: 0, max: 50_000 },
  },
  result: { text: 'Cord left over', unit: 'm', min: -50_000, max: 500 },
  source: [{ text: practice, documents: ['common-practice'], confidence: 'practice' }],
  examples: [
    { kind: 'source', from: practice, inputs: { cordM: 3.048, wayM: 3.048 }, result: 0, tolerance: 0 },
    { kind: 'regression', from: '3.048 − 4.000', inputs: { cordM: 3.048, wayM: 4 }, result: -0.952, tolerance: 1e-9 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 30, formulas: [formula(cordReserveRecord, cordReserve)] }];
