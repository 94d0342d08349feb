import {
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  feet,
  findOutOfRange,
  formula,
  forReference,
  type Limit,
  limit,
} from '../../../rules';

/** What the current runs through: one conductor, both of a single phase, or three of three phases (√3). */
export const CIRCUITS = ['one-conductor', 'single-phase', 'three-phase'] as const;
export type Circuit = (typeof CIRCUITS)[number];

export interface VoltageDropInputs {
  currentA: number;
  /** One way. */
  lengthM: number;
  resistanceOhmPerM: number;
  reactanceOhmPerM: number;
  powerFactor: number;
  circuit: Circuit;
}

/** Voltage in volts that is lost along a conductor. */
export function voltageDrop(inputs: VoltageDropInputs): FormulaResult {
  const refusal = findOutOfRange(voltageDropRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { currentA, lengthM, resistanceOhmPerM, reactanceOhmPerM, powerFactor, circuit } = inputs;
  const impedance = resistanceOhmPerM * powerFactor + reactanceOhmPerM * Math.sqrt(1 - powerFactor ** 2);
  return { ok: true, value: WAYS[circuit] * currentA * lengthM * impedance };
}

const WAYS: Readonly<Record<Circuit, number>> = { 'one-conductor': 1, 'single-phase': 2, 'three-phase': Math.sqrt(3) };

const note = {
  text: 'NEC 210.19(A), 215.2, informational notes: a recommendation, not a rule',
  documents: ['nec'],
  confidence: 'secondary',
} as const;

/** Recommended drop of a branch circuit, as a part of the voltage. */
export const BRANCH_DROP: Limit = limit('branch-voltage-drop', 'Voltage drop of a branch circuit', 'share', { max: 0.03 }, note);
/** Recommended drop of feeder and branch together. */
export const TOTAL_DROP: Limit = forReference(
  limit('total-voltage-drop', 'Voltage drop of feeder and branch', 'share', { max: 0.05 }, note),
);

const faa = 'FAA AC 43.13-1B CHG 1 (9/27/01), Tables 11-7 and 11-8';
const wire = (ohmPerFoot: number, lengthFt: number): VoltageDropInputs => ({
  currentA: 20,
  lengthM: feet(lengthFt),
  resistanceOhmPerM: ohmPerFoot / feet(1),
  reactanceOhmPerM: 0,
  powerFactor: 1,
  circuit: 'one-conductor',
});

export const voltageDropRecord: FormulaRecord<VoltageDropInputs> = {
  id: 'voltage-drop',
  title: 'Voltage drop',
  formula: 'V = k · I · L · (R cos φ + X sin φ), k 1, 2 or √3',
  inputs: {
    currentA: { text: 'Current', unit: 'A', min: 0, max: 400 },
    lengthM: { text: 'Length one way', unit: 'm', min: 0, max: 500 },
    resistanceOhmPerM: { text: 'Resistance of the wire', unit: 'ohm/m', min: 0, max: 0.05 },
    reactanceOhmPerM: { text: 'Reactance of the wire', unit: 'ohm/m', min: 0, max: 0.01 },
    powerFactor: { text: 'Power factor; 0.8 where it is not known', unit: 'ratio', min: 0.5, max: 1 },
    circuit: { text: 'What the current runs through', choices: CIRCUITS },
  },
  result: { text: 'Voltage lost', unit: 'V', min: 0, max: 25_000 },
  source: [
    { text: 'UFC 3-520-01, 10 June 2002, B-2.1: I (R cos + X sin) for one conductor', documents: ['ufc-3-520-01'], confidence: 'read' },
    {
      text: 'Trade column: twice for a single phase, 1.732 times for three',
      documents: ['electrical-trade-press'],
      confidence: 'secondary',
    },
    {
      text: `${faa}: worked examples, aircraft wire at 20 °C; they prove R · L · I alone`,
      documents: ['faa-ac-43-13'],
      confidence: 'read',
    },
  ],
  examples: [
    { kind: 'source', from: `${faa}: No. 6, 107 ft, 20 A, 0.942 V`, inputs: wire(0.00044, 107), result: 0.942, tolerance: 0.0047 },
    { kind: 'source', from: `${faa}: No. 4, 90 ft, 20 A, 0.504 V`, inputs: wire(0.00028, 90), result: 0.504, tolerance: 0.0025 },
    { kind: 'source', from: `${faa}: No. 14, 100 ft, 20 A, 6.12 V`, inputs: wire(0.00306, 100), result: 6.12, tolerance: 0.03 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1190, formulas: [formula(voltageDropRecord, voltageDrop)] },
  { order: 540, limits: [BRANCH_DROP, TOTAL_DROP] },
];
