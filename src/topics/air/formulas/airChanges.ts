import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface AirChangesInputs {
  airflowM3s: number;
  volumeM3: number;
}

/** How often an hour the air of a room is changed. */
export function airChanges(inputs: AirChangesInputs): FormulaResult {
  const refusal = findOutOfRange(airChangesRecord, inputs);
  return refusal === null ? { ok: true, value: (3600 * inputs.airflowM3s) / inputs.volumeM3 } : { ok: false, refusal };
}

const training = 'USAF training text: a room of 20 × 14 × 12 ft has 3360 ft³; one change in a minute is 60 an hour';
const volumeM3 = { text: 'Volume of the room', unit: 'm3', min: 1, max: 1e5 } as const;
const room = toSI(3360, 'ft3');

export const airChangesRecord: FormulaRecord<AirChangesInputs> = {
  id: 'air-changes',
  title: 'Air changes an hour',
  formula: 'n = 3600 Q / V',
  inputs: { airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 100 }, volumeM3 },
  result: { text: 'Air changes an hour', unit: '1/h', min: 0, max: 360_000 },
  source: [{ text: training, documents: ['usaf-training-text'], confidence: 'read' }],
  examples: [{ kind: 'source', from: training, inputs: { airflowM3s: toSI(3360, 'cfm'), volumeM3: room }, result: 60, tolerance: 1e-9 }],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 640, formulas: [formula(airChangesRecord, airChanges)] }];
