import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { handbook } from './support/notes';

export interface AtmosphereInputs {
  altitudeM: number;
}

/** Pressure in Pa of the standard atmosphere at an altitude. */
export function atmosphericPressure(inputs: AtmosphereInputs): FormulaResult {
  const refusal = findOutOfRange(atmosphericPressureRecord, inputs);
  return refusal === null ? { ok: true, value: 101_325 * (1 - 2.25577e-5 * inputs.altitudeM) ** 5.2559 } : { ok: false, refusal };
}

const table = handbook('Table 1');

export const atmosphericPressureRecord: FormulaRecord<AtmosphereInputs> = {
  id: 'atmospheric-pressure',
  title: 'Pressure of the atmosphere',
  formula: 'P = 101325 (1 − 2.25577·10^−5 z)^5.2559',
  inputs: { altitudeM: { text: 'Altitude', unit: 'm', min: -500, max: 10_000 } },
  result: { text: 'Pressure', unit: 'Pa', min: 26_000, max: 108_000 },
  source: [{ text: handbook('equation 3'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: table, inputs: { altitudeM: 0 }, result: 101_325, tolerance: 1 },
    { kind: 'source', from: table, inputs: { altitudeM: 500 }, result: 95_461, tolerance: 1 },
    { kind: 'source', from: table, inputs: { altitudeM: 1000 }, result: 89_875, tolerance: 1 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 500, formulas: [formula(atmosphericPressureRecord, atmosphericPressure)] }];
