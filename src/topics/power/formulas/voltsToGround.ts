import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

/** How a supply is earthed. `wye`: star point; `split-phase`: middle of a single phase; `other`: a corner, or nothing, so the whole voltage counts. */
export const SUPPLY_KINDS = ['wye', 'split-phase', 'other'] as const;
export type SupplyKind = (typeof SUPPLY_KINDS)[number];

export interface VoltsToGroundInputs {
  voltageV: number;
  supply: SupplyKind;
}

/** Voltage to ground of a supply, in volts, from the voltage between its lines. */
export function voltsToGround(inputs: VoltsToGroundInputs): FormulaResult {
  const refusal = findOutOfRange(voltsToGroundRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.voltageV / PARTS[inputs.supply] } : { ok: false, refusal };
}

const PARTS: Readonly<Record<SupplyKind, number>> = { wye: Math.sqrt(3), 'split-phase': 2, other: 1 };

const article = 'Trade article: 120/208 V is 120 V to ground, 277/480 V is 277 V';

export const voltsToGroundRecord: FormulaRecord<VoltsToGroundInputs> = {
  id: 'volts-to-ground',
  title: 'Voltage to ground',
  formula: 'V / √3 from a star point, V / 2 from the middle of a single phase, else V',
  inputs: {
    voltageV: { text: 'Voltage between the lines', unit: 'V', min: 50, max: 600 },
    supply: { text: 'How the supply is grounded', choices: SUPPLY_KINDS },
  },
  result: { text: 'Voltage to ground', unit: 'V', min: 25, max: 600 },
  source: [{ text: `${article}`, documents: ['electrical-trade-press'], confidence: 'secondary' }],
  examples: [
    { kind: 'source', from: article, inputs: { voltageV: 208, supply: 'wye' }, result: 120, tolerance: 0.5 },
    { kind: 'source', from: article, inputs: { voltageV: 480, supply: 'wye' }, result: 277, tolerance: 0.5 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1200, formulas: [formula(voltsToGroundRecord, voltsToGround)] }];
