import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface WaivedHoodInputs {
  floorM2: number;
  /** Appliances that need a Type II hood and have none. */
  appliances: number;
}

/**
 * Exhaust in m³/s of a room whose hoods are waived because its ventilation takes heat and moisture: 0.70 cfm to a
 * square foot of floor, at least 100 ft² to each appliance.
 */
export function waivedHoodExhaust(inputs: WaivedHoodInputs): FormulaResult {
  const refusal = findOutOfRange(waivedHoodExhaustRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const countedM2 = Math.max(inputs.floorM2, inputs.appliances * toSI(100, 'ft2'));
  return { ok: true, value: countedM2 * RATE_MS };
}

/** 0.70 cfm/ft² as a velocity; the rounded 0.00033 m³/s of the print is to a square foot as well. */
const RATE_MS = toSI(0.7, 'fpm');

export interface FloorInputs {
  floorM2: number;
}

/** Exhaust in m³/s of a dish room by the European quick method: 120 m³ an hour to a square metre of floor. */
export function exhaustByFloor(inputs: FloorInputs): FormulaResult {
  const refusal = findOutOfRange(exhaustByFloorRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.floorM2 * toSI(120, 'm3/h') } : { ok: false, refusal };
}

const code = 'IMC 507.3 and 507.1: 0.70 cfm/ft², each appliance as at least 100 ft²';
const europe = 'EN 16282-1, quick method, as constants in a public repository';
const floorM2 = { text: 'Floor of the room', unit: 'm2', min: 1, max: 5000 } as const;

export const waivedHoodExhaustRecord: FormulaRecord<WaivedHoodInputs> = {
  id: 'waived-hood-exhaust',
  title: 'Room exhaust without a hood',
  formula: 'Q = 0.70 cfm/ft² × max(A, 100 ft² × n)',
  inputs: { floorM2, appliances: { text: 'Appliances without their hood', unit: 'count', min: 0, max: 50 } },
  result: { text: 'Exhaust', unit: 'm3/s', min: 0, max: 20 },
  source: [{ text: code, documents: ['imc'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${code}: one appliance, 70 cfm`,
      inputs: { floorM2: toSI(80, 'ft2'), appliances: 1 },
      result: toSI(70, 'cfm'),
      tolerance: 1e-12,
    },
    {
      kind: 'source',
      from: `${code}: a room of 300 ft², 210 cfm`,
      inputs: { floorM2: toSI(300, 'ft2'), appliances: 2 },
      result: toSI(210, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const exhaustByFloorRecord: FormulaRecord<FloorInputs> = {
  id: 'exhaust-by-floor',
  title: 'Room exhaust by the European quick method',
  formula: 'Q = 120 m³/(h·m²) × A',
  inputs: { floorM2 },
  result: { text: 'Exhaust', unit: 'm3/s', min: 0, max: 170 },
  source: [{ text: europe, documents: ['en-16282'], confidence: 'secondary' }],
  examples: [{ kind: 'source', from: europe, inputs: { floorM2: 30 }, result: 1, tolerance: 1e-12 }],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 130, formulas: [formula(waivedHoodExhaustRecord, waivedHoodExhaust), formula(exhaustByFloorRecord, exhaustByFloor)] },
];
