import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface ReceptorInputs {
  /** Of each fixture that empties into it. */
  fixtures: number[];
  own: number;
}

/** Drainage fixture units of a floor drain or floor sink: of all that empties into it, and no less than its own. */
export function receptorUnits(inputs: ReceptorInputs): FormulaResult {
  const refusal = findOutOfRange(receptorUnitsRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const load = inputs.fixtures.reduce((sum, units) => sum + units, 0);
  return { ok: true, value: Math.max(load, inputs.own) };
}

const note = 'IPC 709.1, note to floor sinks, as a question page has it: the load counts';

export const receptorUnitsRecord: FormulaRecord<ReceptorInputs> = {
  id: 'receptor-units',
  title: 'Fixture units of a receptor',
  formula: 'DFU = max(Σ of all that empties into it, its own)',
  inputs: {
    fixtures: { text: 'Units of a fixture that empties into it', unit: 'count', min: 0, max: 320 },
    own: { text: 'Units of the floor drain itself; 0 for a floor sink', unit: 'count', min: 0, max: 6 },
  },
  result: { text: 'Drainage fixture units', unit: 'count', min: 0, max: 10_000 },
  source: [
    { text: `${note}`, documents: ['ipc'], confidence: 'secondary' },
    { text: 'IPC 709.4: no less than the receptor’s own value', documents: ['ipc'], confidence: 'memory' },
  ],
  unprinted: 'A sum; no example of it is at hand.',
  examples: [
    { kind: 'regression', from: 'a machine of 30 and a sink of 3', inputs: { fixtures: [30, 3], own: 0 }, result: 33, tolerance: 0 },
    { kind: 'regression', from: 'less than the floor drain itself', inputs: { fixtures: [1], own: 2 }, result: 2, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1090, formulas: [formula(receptorUnitsRecord, receptorUnits)] }];
