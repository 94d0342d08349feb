import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';

/** How well hands hold the load. Racks with cut-outs were rated good in the manual's dish-machine example. */
export const GRIPS = ['good', 'fair', 'poor'] as const;
export type Grip = (typeof GRIPS)[number];

export interface GripInputs {
  grip: Grip;
  verticalM: number;
}

/** Multiplier of the grip. */
export function gripMultiplier(inputs: GripInputs): FormulaResult {
  const refusal = findOutOfRange(gripMultiplierRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const [low, high] = MULTIPLIERS[inputs.grip];
  return { ok: true, value: inputs.verticalM < inches(30) - 1e-9 ? low : high };
}

const MULTIPLIERS: Readonly<Record<Grip, readonly [low: number, high: number]>> = { good: [1, 1], fair: [0.95, 1], poor: [0.9, 0.9] };

const table = 'DHHS/NIOSH 94-110, Table 7';

export const gripMultiplierRecord: FormulaRecord<GripInputs> = {
  id: 'grip-multiplier',
  title: 'Multiplier of the grip',
  formula: 'good 1; fair 0.95 below 30 in, 1 from there; poor 0.90',
  inputs: {
    grip: { text: 'How well hands hold the load', choices: GRIPS },
    verticalM: { text: 'Hands above the floor', unit: 'm', min: 0, max: 2.5 },
  },
  result: { text: 'Multiplier', unit: 'ratio', min: 0.9, max: 1 },
  source: [
    { text: `${table}: fair`, documents: ['niosh-94-110'], confidence: 'read' },
    { text: `${table}: good and poor`, documents: ['niosh-94-110'], confidence: 'memory' },
  ],
  examples: [
    { kind: 'source', from: `${table}: fair, below 30 in`, inputs: { grip: 'fair', verticalM: inches(29) }, result: 0.95, tolerance: 0 },
    { kind: 'source', from: `${table}: fair, from 30 in`, inputs: { grip: 'fair', verticalM: inches(30) }, result: 1, tolerance: 0 },
    { kind: 'memory', from: `${table}: poor`, inputs: { grip: 'poor', verticalM: 1 }, result: 0.9, tolerance: 0 },
  ],
};

export interface HandsInputs {
  containerM: number;
  verticalM: number;
}

/** How far the hands are before the ankles, in metres, where it is not measured: by the depth of the container and the height of the hands. */
export function handsBeforeAnkles(inputs: HandsInputs): FormulaResult {
  const refusal = findOutOfRange(handsBeforeAnklesRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const reach = inputs.verticalM < inches(10) - 1e-9 ? inches(10) : inches(8);
  return { ok: true, value: reach + inputs.containerM / 2 };
}

const rule = 'DHHS/NIOSH 94-110: H = 8 + W/2 in, or 10 + W/2 in where V is below 10 in';

export const handsBeforeAnklesRecord: FormulaRecord<HandsInputs> = {
  id: 'hands-before-ankles',
  title: 'Hands before the ankles',
  formula: 'H = 8 in + W / 2; below 10 in of height 10 in + W / 2',
  inputs: {
    containerM: { text: 'Depth of the container, front to back', unit: 'm', min: 0, max: 1 },
    verticalM: { text: 'Hands above the floor', unit: 'm', min: 0, max: 2.5 },
  },
  result: { text: 'Distance', unit: 'm', min: inches(8), max: 0.76 },
  source: [{ text: rule, documents: ['niosh-94-110'], confidence: 'read' }],
  unprinted: 'The rule is printed; a rack of 20 in is worked out here.',
  examples: [
    {
      kind: 'regression',
      from: 'a rack of 20 in: 18 in',
      inputs: { containerM: inches(20), verticalM: inches(34) },
      result: inches(18),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: 'a rack of 20 in near the floor: 20 in',
      inputs: { containerM: inches(20), verticalM: inches(7) },
      result: inches(20),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1270, formulas: [formula(gripMultiplierRecord, gripMultiplier), formula(handsBeforeAnklesRecord, handsBeforeAnkles)] },
];
