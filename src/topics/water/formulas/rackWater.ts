import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface RackWaterInputs {
  perRackM3: number;
  racks: number;
  fillM3: number;
  fills: number;
}

/** Water of a machine in m³ over an hour, a meal, a day or a year: so many racks, and so many fillings of the tank. */
export function rackWater(inputs: RackWaterInputs): FormulaResult {
  const refusal = findOutOfRange(rackWaterRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.perRackM3 * inputs.racks + inputs.fillM3 * inputs.fills };
}

const noFill = { fillM3: 0, fills: 0 };

export const rackWaterRecord: FormulaRecord<RackWaterInputs> = {
  id: 'rack-water',
  title: 'Water of the machine',
  formula: 'V = per rack · racks + fill · fills',
  inputs: {
    perRackM3: { text: 'Fresh water of one rack', unit: 'm3', min: 0, max: 0.1 },
    racks: { text: 'Racks in the time that is counted', unit: 'count', min: 0, max: 5e6 },
    fillM3: { text: 'Water of one filling of the tank', unit: 'm3', min: 0, max: 1 },
    fills: { text: 'Fillings in the time that is counted', unit: 'count', min: 0, max: 1e5 },
  },
  result: { text: 'Water used', unit: 'm3', min: 0, max: 6e5 },
  source: [
    {
      text: 'NSF/ANSI 3 listings, preface: gallons per hour are gallons per cycle times racks per hour',
      documents: ['nsf-ansi-3'],
      confidence: 'read',
    },
    { text: 'EPA, WaterSense at Work, 832-F-12-034, equation 4-22: gallons a year', documents: ['epa-watersense'], confidence: 'read' },
  ],
  unprinted: 'Both print the rule and no worked example of a machine with racks.',
  examples: [
    {
      kind: 'regression',
      from: '0.75 gal a rack at 55.3846 racks/h: 41.538 gal in the hour',
      inputs: { perRackM3: toSI(0.75, 'gal'), racks: 55.3846, ...noFill },
      result: toSI(41.538, 'gal'),
      tolerance: toSI(0.001, 'gal'),
    },
    {
      kind: 'regression',
      from: '280 racks a day, 365 days, 0.89 gal: 90,958 gal in the year',
      inputs: { perRackM3: toSI(0.89, 'gal'), racks: 280 * 365, ...noFill },
      result: toSI(90_958, 'gal'),
      tolerance: 1e-6,
    },
    {
      kind: 'regression',
      from: '100 racks of 3 L and 3 fillings of 50 L',
      inputs: { perRackM3: 0.003, racks: 100, fillM3: 0.05, fills: 3 },
      result: 0.45,
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 770, formulas: [formula(rackWaterRecord, rackWater)] }];
