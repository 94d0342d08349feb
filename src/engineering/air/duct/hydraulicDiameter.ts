import { inches } from '../../lengths';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

export interface HydraulicInputs {
  areaM2: number;
  perimeterM: number;
}

/** Hydraulic diameter in metres of a duct of any section, for the Reynolds number and the friction at its true velocity. */
export function hydraulicDiameter(inputs: HydraulicInputs): Outcome {
  const reason = findOutOfRange(hydraulicDiameterRecord, inputs) ?? tooShort(inputs);
  return reason === null ? { ok: true, value: (4 * inputs.areaM2) / inputs.perimeterM } : { ok: false, reason };
}

const also = 'no perimeter is shorter than that of a circle of the same area';

const tooShort = ({ areaM2, perimeterM }: HydraulicInputs) =>
  perimeterM < 2 * Math.sqrt(Math.PI * areaM2) * (1 - 1e-9) ? `${also}: perimeterM is ${perimeterM}, areaM2 is ${areaM2}` : null;

const page = 'Hydraulic diameter, 4A/P (A-E8): a square of 12 in has one of 12 in';

export const hydraulicDiameterRecord: FormulaRecord<HydraulicInputs> = {
  id: 'hydraulic-diameter',
  title: 'Hydraulic diameter',
  formula: 'Dh = 4 A / P',
  inputs: {
    areaM2: { text: 'Area of the section', unit: 'm2', min: 0.001, max: 100 },
    perimeterM: { text: 'Perimeter of the section', unit: 'm', min: 0.1, max: 100 },
  },
  result: { text: 'Hydraulic diameter', unit: 'm', min: 0.00004, max: 12 },
  source: [{ text: page, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: page,
      inputs: { areaM2: inches(12) ** 2, perimeterM: 4 * inches(12) },
      result: inches(12),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: 'a circle has its diameter',
      inputs: { areaM2: Math.PI / 4, perimeterM: Math.PI },
      result: 1,
      tolerance: 1e-12,
    },
  ],
  also,
};
