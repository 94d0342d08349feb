import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { toSI } from '../../../units';

export interface SinkInputs {
  lengthM: number;
  widthM: number;
  depthM: number;
}

/** Volume of one sink compartment in m³, as the county counts it: 7.5 gallons a cubic foot (0.26 % above the true 7.4805). */
export function sinkVolume(inputs: SinkInputs): FormulaResult {
  const refusal = findOutOfRange(sinkVolumeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.lengthM * inputs.widthM * inputs.depthM * ROUNDED_GALLONS };
}

/** 7.5 gallons a cubic foot, without a unit. */
const ROUNDED_GALLONS = (7.5 * toSI(1, 'gal')) / toSI(1, 'ft3');

const table = 'California county directors, hot-water demand table';
const bowl = (side: number): SinkInputs => ({ lengthM: inches(side), widthM: inches(side), depthM: inches(10) });

export const sinkVolumeRecord: FormulaRecord<SinkInputs> = {
  id: 'sink-volume',
  title: 'Volume of a sink compartment',
  formula: 'V = L · W · D · 7.5 gal/ft³',
  inputs: {
    lengthM: { text: 'Inside length', unit: 'm', min: 0.1, max: 2 },
    widthM: { text: 'Inside width', unit: 'm', min: 0.1, max: 2 },
    depthM: { text: 'Depth of water', unit: 'm', min: 0.05, max: 1 },
  },
  result: { text: 'Volume', unit: 'm3', min: 0, max: 4.1 },
  source: [{ text: `${table}`, documents: ['california-hot-water'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${table}: 18 × 18 × 10 in, 14 gal`,
      inputs: bowl(18),
      result: toSI(14, 'gal'),
      tolerance: toSI(0.5, 'gal'),
    },
    {
      kind: 'source',
      from: `${table}: 24 × 24 × 10 in, 25 gal`,
      inputs: bowl(24),
      result: toSI(25, 'gal'),
      tolerance: toSI(0.005, 'gal'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 800, formulas: [formula(sinkVolumeRecord, sinkVolume)] }];
