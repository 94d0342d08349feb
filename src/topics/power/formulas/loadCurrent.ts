import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export const PHASES = ['single', 'three'] as const;
export type Phases = (typeof PHASES)[number];

export interface LoadCurrentInputs {
  powerW: number;
  /** Between the lines. */
  voltageV: number;
  phases: Phases;
  powerFactor: number;
}

/** Current in amperes of a load. The figure on the connection plate, inside the control compartment, goes before it. */
export function loadCurrent(inputs: LoadCurrentInputs): FormulaResult {
  const refusal = findOutOfRange(loadCurrentRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { powerW, voltageV, phases, powerFactor } = inputs;
  return { ok: true, value: powerW / ((phases === 'three' ? Math.sqrt(3) : 1) * voltageV * powerFactor) };
}

const at = (kW: number, voltageV: number, phases: Phases, powerFactor = 1): LoadCurrentInputs => ({
  powerW: 1000 * kW,
  voltageV,
  phases,
  powerFactor,
});

export const loadCurrentRecord: FormulaRecord<LoadCurrentInputs> = {
  id: 'load-current',
  title: 'Current',
  formula: 'I = P / (V · pf), three phases P / (√3 · V · pf)',
  inputs: {
    powerW: { text: 'Power', unit: 'W', min: 0, max: 200_000 },
    voltageV: { text: 'Voltage between the lines', unit: 'V', min: 100, max: 690 },
    phases: { text: 'Phases', choices: PHASES },
    powerFactor: { text: 'Power factor; heaters alone 1', unit: 'ratio', min: 0.5, max: 1 },
  },
  result: { text: 'Current', unit: 'A', min: 0, max: 4000 },
  source: [
    { text: 'Single phase with power factor, in a public file', documents: ['load-current-texts'], confidence: 'secondary' },
    { text: 'Three phases, standard', documents: ['load-current-texts'], confidence: 'memory' },
  ],
  unprinted: 'The inputs are restated; the currents are worked out.',
  examples: [
    {
      kind: 'regression',
      from: '10 kW, 240 V, pf 0.9: 46.30 A',
      inputs: at(10, 240, 'single', 0.9),
      result: 46.3,
      tolerance: 0.005,
    },
    {
      kind: 'regression',
      from: '14.5 kW, 208 V, three phases: 40.25 A',
      inputs: at(14.5, 208, 'three'),
      result: 40.25,
      tolerance: 0.005,
    },
    {
      kind: 'regression',
      from: '24 kW, 480 V, three phases: 28.87 A',
      inputs: at(24, 480, 'three'),
      result: 28.87,
      tolerance: 0.005,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1150, formulas: [formula(loadCurrentRecord, loadCurrent)] }];
