import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface SprayInputs {
  flowM3S: number;
  openS: number;
  days: number;
}

/** Water of a pre-rinse spray valve in m³: its flow, the time it stands open in a day, the days. */
export function sprayWater(inputs: SprayInputs): FormulaResult {
  const refusal = findOutOfRange(sprayWaterRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.flowM3S * inputs.openS * inputs.days } : { ok: false, refusal };
}

const year = (gpm: number): SprayInputs => ({ flowM3S: toSI(gpm, 'gpm'), openS: 200 * 60, days: 365 });

export const sprayWaterRecord: FormulaRecord<SprayInputs> = {
  id: 'spray-water',
  title: 'Water of the pre-rinse spray',
  formula: 'V = V̇ · t · days',
  inputs: {
    flowM3S: { text: 'Flow of the open valve', unit: 'm3/s', min: 0, max: 0.001 },
    openS: { text: 'Time open in a day; usually at most 200 min', unit: 's', min: 0, max: 86_400 },
    days: { text: 'Days that are counted', unit: 'count', min: 0, max: 366 },
  },
  result: { text: 'Water used', unit: 'm3', min: 0, max: 32_000 },
  source: [{ text: 'EPA, WaterSense at Work, 832-F-12-034 (Oct 2012), equation 4-16', documents: ['epa-watersense'], confidence: 'read' }],
  unprinted: 'The equation is printed with its usual values, not with their product.',
  examples: [
    {
      kind: 'regression',
      from: '1.6 gpm, 200 min a day: 116,800 gal a year',
      inputs: year(1.6),
      result: toSI(116_800, 'gal'),
      tolerance: 1e-6,
    },
    { kind: 'regression', from: '1.28 gpm: 93,440 gal a year', inputs: year(1.28), result: toSI(93_440, 'gal'), tolerance: 1e-6 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 780, formulas: [formula(sprayWaterRecord, sprayWater)] }];
