import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches, type Limit, limit } from '../../../rules';
import { toSI } from '../../../units';

/** The equation is printed in metres and in feet; the metric constants give up to 4 % less and are the stricter. */
export const LIFTING_FORMS = ['metric', 'us'] as const;
export type LiftingForm = (typeof LIFTING_FORMS)[number];

/** One end of a lift by both hands. */
export interface LiftInputs {
  /** Hands before the ankles. */
  horizontalM: number;
  /** Hands above the floor. */
  verticalM: number;
  /** How far up or down the lift goes. */
  travelM: number;
  /** How far the body turns. */
  angleDeg: number;
  /** Multiplier of the frequency, from its table. */
  frequency: number;
  /** Multiplier of the grip. */
  coupling: number;
  form: LiftingForm;
}

/** What of the load at best each of them leaves, 0 to 1, by the order of the equation. */
export interface LiftingMultipliers {
  horizontal: number;
  vertical: number;
  distance: number;
  asymmetry: number;
  frequency: number;
  coupling: number;
}

/**
 * Recommended weight limit in kg of a lift (NIOSH). 0 where the equation says that nobody should lift. It does not hold
 * for one hand, sitting, an unstable load, a slippery floor or a hot, humid room, and a dish room often is one.
 */
export function liftingLimit(inputs: LiftInputs): FormulaResult {
  const refusal = findOutOfRange(liftingLimitRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { horizontal, vertical, distance, asymmetry, frequency, coupling } = liftingMultipliers(inputs);
  return { ok: true, value: liftingLoad(inputs.form) * horizontal * vertical * distance * asymmetry * frequency * coupling };
}

interface Constants {
  loadKg: number;
  /** One of the form's length units in metres. */
  unitM: number;
  horizontal: { near: number; far: number };
  vertical: { knuckle: number; factor: number; far: number };
  distance: { constant: number; near: number; far: number };
}

const FORMS: Readonly<Record<LiftingForm, Constants>> = {
  us: {
    loadKg: toSI(51, 'lb'),
    unitM: inches(1),
    horizontal: { near: 10, far: 25 },
    vertical: { knuckle: 30, factor: 0.0075, far: 70 },
    distance: { constant: 1.8, near: 10, far: 70 },
  },
  metric: {
    loadKg: 23,
    unitM: 0.01,
    horizontal: { near: 25, far: 63 },
    vertical: { knuckle: 75, factor: 0.003, far: 175 },
    distance: { constant: 4.5, near: 25, far: 175 },
  },
};

/** The load constant in kg: what may be lifted where every multiplier is 1. */
export const liftingLoad = (form: LiftingForm): number => FORMS[form].loadKg;

/** The multipliers of a lift, also for the picture of what costs most. */
export function liftingMultipliers({
  horizontalM,
  verticalM,
  travelM,
  angleDeg,
  frequency,
  coupling,
  form,
}: LiftInputs): LiftingMultipliers {
  const { unitM, horizontal, vertical, distance } = FORMS[form];
  const h = tidy(horizontalM / unitM);
  const v = tidy(verticalM / unitM);
  const d = tidy(travelM / unitM);
  return {
    horizontal: h > horizontal.far ? 0 : horizontal.near / Math.max(h, horizontal.near),
    vertical: v > vertical.far ? 0 : 1 - vertical.factor * Math.abs(v - vertical.knuckle),
    distance: d > distance.far ? 0 : 0.82 + distance.constant / Math.max(d, distance.near),
    asymmetry: angleDeg > 135 ? 0 : 1 - 0.0032 * angleDeg,
    frequency,
    coupling,
  };
}

/** Without the dust of the conversion, so that a bound stays on its own side. */
const tidy = (value: number) => Math.round(value * 1e9) / 1e9;

/** Room for which the equation was made. Print it with every result. */
export const LIFTING_CLIMATE: readonly Limit[] = [
  limit(
    'lifting-temperature',
    'Temperature of the room for the lifting equation',
    'C',
    { min: toSI(66, 'F'), max: toSI(79, 'F') },
    climate(),
  ),
  limit('lifting-humidity', 'Relative humidity for the lifting equation', 'share', { min: 0.35, max: 0.5 }, climate()),
];

/** Best to hold, in front and upward. */
export const LIFTING_CONTAINER: readonly Limit[] = [
  limit('lifting-container-length', 'Length in front of a container that is best to lift', 'm', { max: inches(16) }, container()),
  limit('lifting-container-height', 'Height of a container that is best to lift', 'm', { max: inches(12) }, container()),
];

function container() {
  return { text: 'DHHS/NIOSH 94-110, rev. 9/2021: optimal container', documents: ['niosh-94-110'], confidence: 'read' } as const;
}

function climate() {
  return {
    text: 'DHHS/NIOSH 94-110, rev. 9/2021: where the equation does not apply',
    documents: ['niosh-94-110'],
    confidence: 'read',
  } as const;
}

const manual = 'DHHS/NIOSH 94-110, Example 5, Dish-Washing Machine Unloading';
const tray = (vertical: number): LiftInputs => ({
  horizontalM: inches(20),
  verticalM: inches(vertical),
  travelM: inches(37),
  angleDeg: 30,
  frequency: 0.8,
  coupling: 1,
  form: 'us',
});

export const liftingLimitRecord: FormulaRecord<LiftInputs> = {
  id: 'lifting-limit',
  title: 'Recommended weight limit',
  formula:
    'RWL = LC · HM · VM · DM · AM · FM · CM; 51 lb, 10/H, 1 − 0.0075 |V − 30|, 0.82 + 1.8/D, 1 − 0.0032 A, or 23 kg, 25/H, 1 − 0.003 |V − 75|, 0.82 + 4.5/D',
  inputs: {
    horizontalM: { text: 'Hands before the ankles', unit: 'm', min: 0, max: 2 },
    verticalM: { text: 'Hands above the floor', unit: 'm', min: 0, max: 2.5 },
    travelM: { text: 'Height that the load goes up or down', unit: 'm', min: 0, max: 2.5 },
    angleDeg: { text: 'Turn of the body', unit: 'deg', min: 0, max: 180 },
    frequency: { text: 'Multiplier of the frequency', unit: 'ratio', min: 0, max: 1 },
    coupling: { text: 'Multiplier of the grip', unit: 'ratio', min: 0.9, max: 1 },
    form: { text: 'Printed in centimetres and kilograms, or in inches and pounds', choices: LIFTING_FORMS },
  },
  result: { text: 'Weight that nearly all may lift', unit: 'kg', min: 0, max: 23.2 },
  source: [
    {
      text: 'DHHS/NIOSH 94-110, Applications Manual, rev. 9/2021, public domain; read in a page-cited specification and a textbook chapter',
      documents: ['niosh-94-110'],
      confidence: 'read',
    },
  ],
  examples: [
    { kind: 'source', from: `${manual}, origin, 14.4 lb`, inputs: tray(44), result: toSI(14.4, 'lb'), tolerance: toSI(0.1, 'lb') },
    {
      kind: 'source',
      from: `${manual}, destination, 13.3 lb`,
      inputs: tray(7),
      result: toSI(13.3, 'lb'),
      tolerance: toSI(0.1, 'lb'),
    },
    {
      kind: 'regression',
      from: 'the same with its metric constants',
      inputs: { ...tray(44), form: 'metric' },
      result: 6.321,
      tolerance: 0.01,
    },
  ],
};

export interface LiftingIndexInputs {
  loadKg: number;
  limitKg: number;
}

/** Load over its limit: above 1 some people are at risk, above 3 many. */
export function liftingIndex(inputs: LiftingIndexInputs): FormulaResult {
  const refusal = findOutOfRange(liftingIndexRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.loadKg / inputs.limitKg } : { ok: false, refusal };
}

export const liftingIndexRecord: FormulaRecord<LiftingIndexInputs> = {
  id: 'lifting-index',
  title: 'Lifting index',
  formula: 'LI = load / RWL',
  inputs: {
    loadKg: { text: 'Load', unit: 'kg', min: 0, max: 100 },
    limitKg: { text: 'Recommended weight limit; at 0 there is no index, nobody should lift', unit: 'kg', min: 0.01, max: 23.2 },
  },
  result: { text: 'Lifting index', unit: 'ratio', min: 0, max: 10_000 },
  source: [{ text: 'DHHS/NIOSH 94-110: LI = load / RWL', documents: ['niosh-94-110'], confidence: 'read' }],
  unprinted: 'The index of the dish-machine example is worked out here.',
  examples: [
    {
      kind: 'regression',
      from: '20 lb at 14.4 lb: 1.39',
      inputs: { loadKg: toSI(20, 'lb'), limitKg: toSI(14.4, 'lb') },
      result: 1.39,
      tolerance: 0.005,
    },
    {
      kind: 'regression',
      from: '20 lb at 13.3 lb: 1.5',
      inputs: { loadKg: toSI(20, 'lb'), limitKg: toSI(13.3, 'lb') },
      result: 1.5,
      tolerance: 0.05,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1240, formulas: [formula(liftingLimitRecord, liftingLimit), formula(liftingIndexRecord, liftingIndex)] },
  { order: 640, limits: [...LIFTING_CLIMATE, ...LIFTING_CONTAINER] },
];
