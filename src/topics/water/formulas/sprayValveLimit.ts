import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, type Limit, limit } from '../../../rules';
import { isAtMost, toSI } from '../../../units';

export interface SprayValveInputs {
  forceN: number;
}

/** Largest flow in m³/s of a pre-rinse spray valve made since 28 January 2019, by the force of its spray. */
export function sprayValveLimit(inputs: SprayValveInputs): FormulaResult {
  const refusal = findOutOfRange(sprayValveLimitRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const [, gpm] = CLASSES.find(([ounces]) => isAtMost(inputs.forceN, ounceForce(ounces))) ?? STRONGEST;
  return { ok: true, value: toSI(gpm, 'gpm') };
}

/** So many ounces of force, sixteenths of a pound, in newtons. */
const ounceForce = (ounces: number) => toSI(ounces / 16, 'lbf');

const STRONGEST = [Number.POSITIVE_INFINITY, 1.28] as const;
const CLASSES: readonly (readonly [ounces: number, gpm: number])[] = [[5, 1], [8, 1.2], STRONGEST];

const rule = '10 CFR 431.266, commercial prerinse spray valves, from 28 January 2019';
const at = (ounces: number): SprayValveInputs => ({ forceN: ounceForce(ounces) });

export const sprayValveLimitRecord: FormulaRecord<SprayValveInputs> = {
  id: 'spray-valve-limit',
  title: 'Largest flow of a spray valve',
  formula: '1.00 gpm to 5.0 ozf, 1.20 gpm to 8.0 ozf, 1.28 gpm above',
  inputs: { forceN: { text: 'Force of the spray', unit: 'N', min: 0, max: 10 } },
  result: { text: 'Largest flow', unit: 'm3/s', min: toSI(1, 'gpm'), max: toSI(1.28, 'gpm') },
  source: [{ text: `${rule}`, documents: ['cfr-10-431'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: `${rule}: 5.0 ozf`, inputs: at(5), result: toSI(1, 'gpm'), tolerance: 0 },
    { kind: 'source', from: `${rule}: 8.0 ozf`, inputs: at(8), result: toSI(1.2, 'gpm'), tolerance: 0 },
    { kind: 'source', from: `${rule}: above 8.0 ozf`, inputs: at(8.1), result: toSI(1.28, 'gpm'), tolerance: 0 },
  ],
};

/** Valves made from 2006 to 27 January 2019. */
export const OLDER_SPRAY_VALVE: Limit = limit(
  'older-spray-valve',
  'Flow of a spray valve made from 2006 to January 2019',
  'm3/s',
  { max: toSI(1.6, 'gpm') },
  { text: '10 CFR 431.266, commercial prerinse spray valves, to 27 January 2019', documents: ['cfr-10-431'], confidence: 'read' },
);

/** More than this is unusual. */
export const SPRAY_OPEN_TIME: Limit = limit(
  'spray-open-time',
  'Time that a pre-rinse spray stands open in a day',
  's',
  { max: toSI(200, 'min') },
  { text: 'EPA, WaterSense at Work, 832-F-12-034 (Oct 2012), section 4', documents: ['epa-watersense'], confidence: 'read' },
);

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 790, formulas: [formula(sprayValveLimitRecord, sprayValveLimit)] },
  { order: 320, limits: [OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME] },
];
