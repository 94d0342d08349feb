import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { toSI } from '../../../units';

export interface DuctVelocityInputs {
  airflowM3s: number;
  /** True area inside, round or rectangular. */
  areaM2: number;
}

/** Mean velocity in m/s of the air in a duct. */
export function ductVelocity(inputs: DuctVelocityInputs): FormulaResult {
  const refusal = findOutOfRange(ductVelocityRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.airflowM3s / inputs.areaM2 } : { ok: false, refusal };
}

const sheet = 'Velocity-pressure sheet: 390 cfm in a duct of 4 in are 4467 fpm';

export const ductVelocityRecord: FormulaRecord<DuctVelocityInputs> = {
  id: 'duct-velocity',
  title: 'Velocity in a duct',
  formula: 'V = Q / A',
  inputs: {
    airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 60 },
    areaM2: { text: 'Area inside', unit: 'm2', min: 0.0005, max: 9 },
  },
  result: { text: 'Velocity', unit: 'm/s', min: 0, max: 120_000 },
  source: [{ text: sheet, documents: ['velocity-pressure-sheet'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: sheet,
      inputs: { airflowM3s: toSI(390, 'cfm'), areaM2: (Math.PI / 4) * inches(4) ** 2 },
      result: toSI(4467, 'fpm'),
      tolerance: 0.002 * toSI(4467, 'fpm'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 230, formulas: [formula(ductVelocityRecord, ductVelocity)] }];
