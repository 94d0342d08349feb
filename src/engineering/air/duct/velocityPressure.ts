import { toSI } from '../../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { STANDARD_DENSITY } from '../standardAir';

export interface VelocityPressureInputs {
  velocityMs: number;
  densityKgM3: number;
}

/** Velocity pressure in Pa: what the loss of a fitting is counted on. It scales with the density. */
export function velocityPressure(inputs: VelocityPressureInputs): Outcome {
  const reason = findOutOfRange(velocityPressureRecord, inputs);
  return reason === null ? { ok: true, value: (inputs.densityKgM3 * inputs.velocityMs ** 2) / 2 } : { ok: false, reason };
}

const sheet = 'Velocity-pressure sheet: VP = (V/4005)² at 0.075 lb/ft³ (A-E6); 4467 fpm is 1.24 in. wg (A-W8)';

export const velocityPressureRecord: FormulaRecord<VelocityPressureInputs> = {
  id: 'velocity-pressure',
  title: 'Velocity pressure',
  formula: 'VP = ρ V² / 2',
  inputs: {
    velocityMs: { text: 'Velocity', unit: 'm/s', min: 0, max: 60 },
    densityKgM3: { text: 'Density', unit: 'kg/m3', min: 0.1, max: 2000 },
  },
  result: { text: 'Velocity pressure', unit: 'Pa', min: 0, max: 3.6e6 },
  source: [{ text: sheet, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: sheet,
      inputs: { velocityMs: toSI(4467, 'fpm'), densityKgM3: STANDARD_DENSITY },
      result: toSI(1.24, 'inH2O'),
      tolerance: toSI(0.005, 'inH2O'),
    },
  ],
};
