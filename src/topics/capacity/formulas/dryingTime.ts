import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface DryingTimeInputs {
  racks: number;
  racksPerH: number;
}

/** Seconds that a rack can stand and dry when so many find room, on the average (Little's law). */
export function dryingTime(inputs: DryingTimeInputs): FormulaResult {
  const refusal = findOutOfRange(dryingTimeRecord, inputs);
  return refusal === null ? { ok: true, value: (3600 * inputs.racks) / inputs.racksPerH } : { ok: false, refusal };
}

export const dryingTimeRecord: FormulaRecord<DryingTimeInputs> = {
  id: 'drying-time',
  title: 'Time to dry on the clean table',
  formula: 'W = L / λ',
  inputs: {
    racks: { text: 'Racks that find room after the machine', unit: 'count', min: 0, max: 250 },
    racksPerH: { text: 'Racks an hour', unit: '1/h', min: 1, max: 2000 },
  },
  result: { text: 'Time that a rack can stand', unit: 's', min: 0, max: 900_000 },
  source: [
    {
      text: "Little's law; 3 places after hot water and 5 after chemicals are asked by one city",
      documents: ['orono-letter', 'queueing-texts'],
      confidence: 'read',
    },
  ],
  unprinted: 'The city prints the places, not how they come about.',
  examples: [
    {
      kind: 'regression',
      from: '3 racks at 55.3846 an hour: 195 s',
      inputs: { racks: 3, racksPerH: 55.3846 },
      result: 195,
      tolerance: 1e-3,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 710, formulas: [formula(dryingTimeRecord, dryingTime)] }];
