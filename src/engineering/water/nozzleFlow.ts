import { toSI } from '../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface NozzleInputs {
  ratedM3S: number;
  ratedPa: number;
  actualPa: number;
}

/** Flow in m³/s of a nozzle at another pressure than the one it is rated for. */
export function nozzleFlow(inputs: NozzleInputs): Outcome {
  const reason = findOutOfRange(nozzleFlowRecord, inputs);
  return reason === null ? { ok: true, value: inputs.ratedM3S * Math.sqrt(inputs.actualPa / inputs.ratedPa) } : { ok: false, reason };
}

export const nozzleFlowRecord: FormulaRecord<NozzleInputs> = {
  id: 'nozzle-flow',
  title: 'Flow of a nozzle at another pressure',
  formula: 'q₂ = q₁ · √(p₂ / p₁)',
  inputs: {
    ratedM3S: { text: 'Flow at the rated pressure', unit: 'm3/s', min: 0, max: 0.002 },
    ratedPa: { text: 'Rated flow pressure', unit: 'Pa', min: 20_000, max: 600_000 },
    actualPa: { text: 'Flow pressure', unit: 'Pa', min: 0, max: 600_000 },
  },
  result: { text: 'Flow', unit: 'm3/s', min: 0, max: 0.011 },
  source: [{ text: 'Orifice law; in no document at hand (W-P8)', confidence: 'memory' }],
  unprinted: 'From memory.',
  examples: [
    {
      kind: 'memory',
      from: 'a quarter of the pressure gives half the flow',
      inputs: { ratedM3S: 3e-4, ratedPa: toSI(20, 'psi'), actualPa: toSI(5, 'psi') },
      result: 1.5e-4,
      tolerance: 1e-15,
    },
  ],
};
