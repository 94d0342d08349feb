import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, feet, findOutOfRange, formula } from '../../../rules';
import { CIRCULAR_MILS, MEASURED_SIZES, type WireSize } from './support/wire';

export interface WireResistanceInputs {
  size: WireSize;
}

/** Resistance of copper wire at 75 °C in ohms a metre, from its area. */
export function wireResistance(inputs: WireResistanceInputs): FormulaResult {
  const refusal = findOutOfRange(wireResistanceRecord, inputs);
  const area = CIRCULAR_MILS[inputs.size];
  if (refusal !== null) return { ok: false, refusal };
  const about = { input: 'size', value: inputs.size };
  if (area === undefined) return { ok: false, refusal: createRefusal(wireResistanceRecord, 'wire-area-not-held', {}, about) };
  return { ok: true, value: OHM_CMIL_PER_FOOT / area / feet(1) };
}

/** Copper at 75 °C. */
const OHM_CMIL_PER_FOOT = 12.9;

const perThousandFeet = (ohm: number) => ohm / 1000 / feet(1);

export const wireResistanceRecord: FormulaRecord<WireResistanceInputs> = {
  id: 'wire-resistance',
  title: 'Resistance of wire',
  formula: 'R = 12.9 / circular mils, ohm a foot',
  inputs: { size: { text: 'Size of copper wire', choices: MEASURED_SIZES } },
  result: { text: 'Resistance', unit: 'ohm/m', min: 1e-4, max: 0.011 },
  source: [
    { text: 'Solid copper wire table, a textbook source: areas', documents: ['copper-wire-table'], confidence: 'read' },
    { text: '12.9 ohm-circular-mils a foot at 75 °C', documents: ['copper-wire-table'], confidence: 'memory' },
  ],
  unprinted: 'The constant is from memory; the products are worked out.',
  examples: [
    {
      kind: 'memory',
      from: '6 AWG: 0.491 ohm in 1000 ft',
      inputs: { size: '6' },
      result: perThousandFeet(0.491),
      tolerance: perThousandFeet(0.0005),
    },
    {
      kind: 'regression',
      from: '2 AWG: 0.194 ohm in 1000 ft',
      inputs: { size: '2' },
      result: perThousandFeet(0.194),
      tolerance: perThousandFeet(0.0005),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1180, formulas: [formula(wireResistanceRecord, wireResistance)] }];
