import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface RinseFlowInputs {
  perRackM3: number;
  rinseS: number;
}

/** Flow in m³/s that the line brings while a rack is rinsed. */
export function rinseFlow(inputs: RinseFlowInputs): FormulaResult {
  const refusal = findOutOfRange(rinseFlowRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.perRackM3 / inputs.rinseS } : { ok: false, refusal };
}

export const rinseFlowRecord: FormulaRecord<RinseFlowInputs> = {
  id: 'rinse-flow',
  title: 'Flow of the rinse',
  formula: 'V̇ = V / t',
  inputs: {
    perRackM3: { text: 'Fresh water of one rack', unit: 'm3', min: 0, max: 0.1 },
    rinseS: { text: 'Time of the rinse', unit: 's', min: 3, max: 3600 },
  },
  result: { text: 'Flow while it rinses', unit: 'm3/s', min: 0, max: 0.034 },
  source: [{ text: 'Volume over time, as if the flow were even', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'A quotient.',
  examples: [
    {
      kind: 'regression',
      from: '0.75 gal in 10 s: 4.5 gpm',
      inputs: { perRackM3: toSI(0.75, 'gal'), rinseS: 10 },
      result: toSI(4.5, 'gpm'),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 850, formulas: [formula(rinseFlowRecord, rinseFlow)] }];
