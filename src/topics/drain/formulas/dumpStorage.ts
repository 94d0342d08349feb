import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface DumpInputs {
  waterM3: number;
  dumpM3S: number;
  drainM3S: number;
}

/** What a floor sink must hold in m³ while a machine dumps faster than the pipe below carries away; 0 when the pipe keeps up. */
export function dumpStorage(inputs: DumpInputs): FormulaResult {
  const refusal = findOutOfRange(dumpStorageRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.waterM3 * Math.max(0, 1 - inputs.drainM3S / inputs.dumpM3S) };
}

const at = (dumpGpm: number): DumpInputs => ({ waterM3: toSI(12, 'gal'), dumpM3S: toSI(dumpGpm, 'gpm'), drainM3S: toSI(21, 'gpm') });

export const dumpStorageRecord: FormulaRecord<DumpInputs> = {
  id: 'dump-storage',
  title: 'Storage for a dump',
  formula: 'S = V · (1 − drain / dump), at least 0',
  inputs: {
    waterM3: { text: 'Water that is dumped at once', unit: 'm3', min: 0, max: 1 },
    dumpM3S: { text: 'Peak flow from the machine', unit: 'm3/s', min: 1e-5, max: 0.02 },
    drainM3S: { text: 'Flow that the drain carries away', unit: 'm3/s', min: 0, max: 0.3 },
  },
  result: { text: 'Volume to be held', unit: 'm3', min: 0, max: 1 },
  source: [{ text: 'Balance of volume: what comes less what goes, while it comes', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'No peak flow of a door machine is published; it is an input.',
  examples: [
    { kind: 'regression', from: '12 gal at 30 gpm into 21 gpm: 3.6 gal', inputs: at(30), result: toSI(3.6, 'gal'), tolerance: 1e-12 },
    { kind: 'regression', from: 'at 15 gpm the pipe keeps up', inputs: at(15), result: 0, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1130, formulas: [formula(dumpStorageRecord, dumpStorage)] }];
