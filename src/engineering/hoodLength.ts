import { type FormulaRecord, findOutOfRange, type Outcome } from './record';

export interface HoodLengthInputs {
  machineM: number;
  overhangM: number;
  openEnds: number;
}

/** Least inside length of a canopy hood over one direction of a machine, in metres: the overhang beyond each open end. */
export function hoodLength(inputs: HoodLengthInputs): Outcome {
  const reason = findOutOfRange(hoodLengthRecord, inputs);
  return reason === null ? { ok: true, value: inputs.machineM + inputs.overhangM * inputs.openEnds } : { ok: false, reason };
}

const code = 'IMC 507.1.6 (507.4.1 in 2015–2021), canopy size: 6 in beyond the appliance on all open sides (A-H8)';

export const hoodLengthRecord: FormulaRecord<HoodLengthInputs> = {
  id: 'hood-length',
  title: 'Least hood length',
  formula: 'L = machine + overhang × open ends',
  inputs: {
    machineM: { text: 'Machine in this direction', unit: 'm', min: 0.3, max: 3 },
    overhangM: { text: 'Overhang on an open side', unit: 'm', min: 0, max: 1 },
    openEnds: { text: 'Ends that no wall closes', unit: 'count', min: 0, max: 2 },
  },
  result: { text: 'Inside length of the hood', unit: 'm', min: 0.3, max: 5 },
  source: [{ text: code, confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${code}: a machine of 26 in, both ends open, needs 38 in (A-TL10)`,
      inputs: { machineM: 0.6604, overhangM: 0.1524, openEnds: 2 },
      result: 0.9652,
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: 'the same with one end against a wall: 32 in',
      inputs: { machineM: 0.6604, overhangM: 0.1524, openEnds: 1 },
      result: 0.8128,
      tolerance: 1e-12,
    },
  ],
};
