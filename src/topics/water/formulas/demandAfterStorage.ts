import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface StorageInputs {
  demandM3S: number;
  tankM3: number;
  peakS: number;
}

/** What a heater must still make after the tank has given its share over the peak, in m³/s; 0 when the tank gives it all. */
export function demandAfterStorage(inputs: StorageInputs): FormulaResult {
  const refusal = findOutOfRange(demandAfterStorageRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { demandM3S, tankM3, peakS } = inputs;
  return { ok: true, value: Math.max(0, demandM3S - (USABLE * tankM3) / peakS) };
}

/** Part of a tank that comes out hot. */
const USABLE = 0.7;

export const demandAfterStorageRecord: FormulaRecord<StorageInputs> = {
  id: 'demand-after-storage',
  title: 'Demand after storage',
  formula: 'Q_n = Q_t − 0.7 · s / d, at least 0',
  inputs: {
    demandM3S: { text: 'Hot water wanted in the busiest hour', unit: 'm3/s', min: 0, max: 0.01 },
    tankM3: { text: 'Volume of the tank', unit: 'm3', min: 0, max: 10 },
    peakS: { text: 'Length of the peak: 1 h with single-service ware, 2 h with ware that is washed', unit: 's', min: 900, max: 14_400 },
  },
  result: { text: 'Demand left to the heater', unit: 'm3/s', min: 0, max: 0.01 },
  source: [{ text: 'Monterey County CA, form PC-HWH: storage credit', documents: ['monterey-pc-hwh'], confidence: 'read' }],
  unprinted: 'The form prints the rule and no filled-in example.',
  examples: [
    {
      kind: 'regression',
      from: '100 gph, a tank of 100 gal over 2 h: 100 − 35',
      inputs: { demandM3S: toSI(100, 'gph'), tankM3: toSI(100, 'gal'), peakS: 7200 },
      result: toSI(65, 'gph'),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: '20 gph, the same tank over 1 h: all from the tank',
      inputs: { demandM3S: toSI(20, 'gph'), tankM3: toSI(100, 'gal'), peakS: 3600 },
      result: 0,
      tolerance: 0,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 820, formulas: [formula(demandAfterStorageRecord, demandAfterStorage)] }];
