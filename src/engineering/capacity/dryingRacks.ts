import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface DryingInputs {
  racksPerH: number;
  dryingS: number;
}

/** Racks that stand and dry at once, on the average (Little's law). Whole places are this, rounded up. */
export function dryingRacks(inputs: DryingInputs): Outcome {
  const reason = findOutOfRange(dryingRacksRecord, inputs);
  return reason === null ? { ok: true, value: (inputs.racksPerH * inputs.dryingS) / 3600 } : { ok: false, reason };
}

export const dryingRacksRecord: FormulaRecord<DryingInputs> = {
  id: 'drying-racks',
  title: 'Racks that dry at once',
  formula: 'L = λ · W',
  inputs: {
    racksPerH: { text: 'Racks an hour', unit: '1/h', min: 0, max: 2000 },
    dryingS: { text: 'Time that a rack stands to dry', unit: 's', min: 0, max: 7200 },
  },
  result: { text: 'Racks', unit: 'count', min: 0, max: 4000 },
  source: [{ text: "Little's law; 3 places after hot water and 5 after chemicals are asked by one city (W-F17)", confidence: 'read' }],
  unprinted: 'The city prints the places, not how they come about.',
  examples: [
    {
      kind: 'regression',
      from: '55.3846 racks/h, 3 min: 2.769, so 3 places (L-CT9)',
      inputs: { racksPerH: 55.3846, dryingS: 180 },
      result: 2.769,
      tolerance: 1e-3,
    },
    {
      kind: 'regression',
      from: '55.3846 racks/h, 5 min: 4.615, so 5 places (L-CT9)',
      inputs: { racksPerH: 55.3846, dryingS: 300 },
      result: 4.615,
      tolerance: 1e-3,
    },
  ],
};
