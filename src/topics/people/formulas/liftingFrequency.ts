import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches, type RuleRecord } from '../../../rules';

/** How long people lift: to 1 h with as much rest after it, to 2 h with a third of it, to 8 h. */
export const LIFTING_DURATIONS = ['short', 'moderate', 'long'] as const;
export type LiftingDuration = (typeof LIFTING_DURATIONS)[number];

/** Longest work of each, in seconds, and the least rest after it as a share of that work. */
const DURATIONS: Readonly<Record<LiftingDuration, { longestS: number; rest: number }>> = {
  short: { longestS: 3600, rest: 1 },
  moderate: { longestS: 7200, rest: 0.3 },
  long: { longestS: 28_800, rest: 0 },
};

/** As what so much lifting counts, with so much lighter work after it; null above 8 h, for which the equation was not made. */
export function liftingDuration(workS: number, restS: number): LiftingDuration | null {
  const fits = (kind: LiftingDuration) => workS <= DURATIONS[kind].longestS && restS >= DURATIONS[kind].rest * workS;
  return LIFTING_DURATIONS.find(fits) ?? null;
}

export const liftingDurationRule: RuleRecord = {
  id: 'lifting-duration',
  title: 'How long lifting lasts',
  rule: 'Lifting to 1 h counts as short with as long a rest or lighter work after it, to 2 h as moderate with 0.3 of it; all else, to 8 h, as long.',
  source: [{ text: 'DHHS/NIOSH 94-110, rev. 9/2021, duration categories', documents: ['niosh-94-110'], confidence: 'read' }],
};

export interface FrequencyInputs {
  liftsPerH: number;
  duration: LiftingDuration;
  /** Hands above the floor at the start of the lift. */
  verticalM: number;
}

/** Multiplier of the frequency of lifting, 0 to 1: straight lines between the rows of the table. */
export function frequencyMultiplier(inputs: FrequencyInputs): FormulaResult {
  const refusal = findOutOfRange(frequencyMultiplierRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const perMinute = inputs.liftsPerH / 60;
  const isLow = inputs.verticalM < inches(30) - 1e-9;
  const column = LIFTING_DURATIONS.indexOf(inputs.duration) * 2 + (isLow ? 0 : 1);
  return { ok: true, value: perMinute > 15 ? 0 : between(Math.max(0.2, perMinute), column) };
}

function between(perMinute: number, column: number): number {
  const next = Math.max(
    1,
    TABLE.findIndex(([lifts]) => perMinute <= lifts),
  );
  const [below, above] = [TABLE[next - 1], TABLE[next]];
  if (below === undefined || above === undefined) return 0;
  const [from = 0, to = 0] = [below[1][column], above[1][column]];
  return from + ((to - from) * (perMinute - below[0])) / (above[0] - below[0]);
}

/** Lifts a minute; then short, moderate, long, each below and from 30 in. */
const TABLE: readonly (readonly [lifts: number, row: readonly number[]])[] = [
  [0.2, [1, 1, 0.95, 0.95, 0.85, 0.85]],
  [0.5, [0.97, 0.97, 0.92, 0.92, 0.81, 0.81]],
  [1, [0.94, 0.94, 0.88, 0.88, 0.75, 0.75]],
  [2, [0.91, 0.91, 0.84, 0.84, 0.65, 0.65]],
  [3, [0.88, 0.88, 0.79, 0.79, 0.55, 0.55]],
  [4, [0.84, 0.84, 0.72, 0.72, 0.45, 0.45]],
  [5, [0.8, 0.8, 0.6, 0.6, 0.35, 0.35]],
  [6, [0.75, 0.75, 0.5, 0.5, 0.27, 0.27]],
  [7, [0.7, 0.7, 0.42, 0.42, 0.22, 0.22]],
  [8, [0.6, 0.6, 0.35, 0.35, 0.18, 0.18]],
  [9, [0.52, 0.52, 0.3, 0.3, 0, 0.15]],
  [10, [0.45, 0.45, 0.26, 0.26, 0, 0.13]],
  [11, [0.41, 0.41, 0, 0.23, 0, 0]],
  [12, [0.37, 0.37, 0, 0.21, 0, 0]],
  [13, [0, 0.34, 0, 0, 0, 0]],
  [14, [0, 0.31, 0, 0, 0, 0]],
  [15, [0, 0.28, 0, 0, 0, 0]],
];

const table = 'DHHS/NIOSH 94-110, Table 5, as public files restate it';
const at = (perMinute: number, duration: LiftingDuration, vertical: number): FrequencyInputs => ({
  liftsPerH: perMinute * 60,
  duration,
  verticalM: inches(vertical),
});

export const frequencyMultiplierRecord: FormulaRecord<FrequencyInputs> = {
  id: 'frequency-multiplier',
  title: 'Multiplier of the frequency',
  formula: 'straight lines between the rows of Table 5; below 0.2 a minute as at 0.2, above 15 a minute 0',
  inputs: {
    liftsPerH: { text: 'Lifts an hour', unit: '1/h', min: 0, max: 3600 },
    duration: { text: 'To 1 h, to 2 h, to 8 h', choices: LIFTING_DURATIONS },
    verticalM: { text: 'Hands above the floor at the start', unit: 'm', min: 0, max: 2.5 },
  },
  result: { text: 'Multiplier', unit: 'ratio', min: 0, max: 1 },
  source: [{ text: `${table}`, documents: ['niosh-94-110'], confidence: 'secondary' }],
  examples: [
    { kind: 'source', from: `${table}: 5 a minute, to 1 h`, inputs: at(5, 'short', 44), result: 0.8, tolerance: 1e-12 },
    { kind: 'source', from: `${table}: 9 a minute, to 8 h, below 30 in`, inputs: at(9, 'long', 29), result: 0, tolerance: 0 },
    { kind: 'source', from: `${table}: 9 a minute, to 8 h, from 30 in`, inputs: at(9, 'long', 30), result: 0.15, tolerance: 1e-12 },
    { kind: 'regression', from: 'half way from 5 to 6 a minute, to 2 h', inputs: at(5.5, 'moderate', 30), result: 0.55, tolerance: 1e-12 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1260, formulas: [formula(frequencyMultiplierRecord, frequencyMultiplier)] },
  { order: 140, rules: [liftingDurationRule] },
];
