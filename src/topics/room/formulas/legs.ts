import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  inches,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { isAtMost } from '../../../units';

export interface FloorLegInputs {
  /** From where the floor below is cleaned to its farthest point. */
  farthestM: number;
}

/** Least clear height in metres under equipment that stands on legs on the floor and is not sealed to it. */
export function floorLegs(inputs: FloorLegInputs): FormulaResult {
  const refusal = findOutOfRange(floorLegsRecord, inputs);
  return refusal === null ? { ok: true, value: inches(isAtMost(inputs.farthestM, inches(6)) ? 4 : 6) } : { ok: false, refusal };
}

const floor = 'FDA Food Code 4-402.12 as 7 Pa. Code 46.652(c)';

export const floorLegsRecord: FormulaRecord<FloorLegInputs> = {
  id: 'floor-legs',
  title: 'Clear height under equipment on the floor',
  formula: '6 in; 4 in where no floor is more than 6 in from the access',
  inputs: { farthestM: { text: 'Farthest floor below it from where it is cleaned', unit: 'm', min: 0, max: 5 } },
  result: { text: 'Least clear height', unit: 'm', min: inches(4), max: inches(6) },
  source: [{ text: `${floor}`, documents: ['fda-food-code'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: `${floor}: 6 in from the access`, inputs: { farthestM: inches(6) }, result: inches(4), tolerance: 0 },
    { kind: 'source', from: `${floor}: farther`, inputs: { farthestM: inches(6.1) }, result: inches(6), tolerance: 0 },
  ],
};

/**
 * Whether one of the three ways of spacing is enough. States differ in the word that joins them; `all` is read so that
 * a gap without room to clean is both tight and sealed. It is the stricter.
 */
export const SPACING_RULES = ['all', 'any'] as const;
export type SpacingRule = (typeof SPACING_RULES)[number];

export const spacingRule: RuleRecord = {
  id: 'equipment-spacing',
  title: 'Gap between fixed equipment and its neighbours',
  rule: 'Room to clean beside, behind and above; or a gap of at most 1/32 in; or sealed where it is splashed.',
  source: [
    {
      text: 'FDA Food Code 4-402.11 as WAC 246-215-04405; Pennsylvania joins its parts with “both”',
      documents: ['fda-food-code', 'wac-246-215'],
      confidence: 'read',
    },
  ],
};

/** A gap, and what is true of it. */
export interface GapCase {
  gapM: number;
  /** Wide enough that a person can clean in it. */
  cleanable: boolean;
  sealed: boolean;
}

/** Whether a gap is as the rule wants it. */
export function judgeGap({ gapM, cleanable, sealed }: GapCase, rule: SpacingRule): Ruling {
  const tight = isAtMost(gapM, inches(1 / 32));
  const closed = rule === 'all' ? tight && sealed : tight || sealed;
  const against = rule === 'all' ? 'gap-not-closed-and-sealed' : 'gap-not-closed-nor-sealed';
  return ruling(cleanable || closed ? null : createRefusal(spacingRule, against, {}));
}

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 1300, group: 'people', formulas: [formula(floorLegsRecord, floorLegs)] },
  { order: 130, group: 'people', rules: [spacingRule] },
];
