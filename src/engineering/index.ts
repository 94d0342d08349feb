import { AIR_FORMULAS, AIR_LIMITS, AIR_RULES } from './air';
import { bendFactor, bendFactorRecord } from './bendFactor';
import { CAPACITY_FORMULAS } from './capacity';
import { cordReserve, cordReserveRecord } from './cordReserve';
import { DRAIN_FORMULAS, DRAIN_LIMITS, DRAIN_RULES } from './drain';
import { equivalentLength, equivalentLengthRecord } from './equivalentLength';
import { type Formula, formula } from './formula';
import { HEAT_FORMULAS, HEAT_LIMITS } from './heat';
import type { Limit } from './limit';
import { PEOPLE_FORMULAS, PEOPLE_LIMITS, PEOPLE_RULES } from './people';
import { POWER_FORMULAS, POWER_LIMITS, POWER_RULES } from './power';
import type { RuleRecord } from './rule';
import { SANITARY_LIMITS, SANITARY_RULES } from './sanitary';
import { WATER_FORMULAS, WATER_LIMITS, WATER_RULES } from './water';

export * from './air';
export { BEND_RULES, type BendRule, bendFactor } from './bendFactor';
export * from './capacity';
export { cordReserve } from './cordReserve';
export * from './drain';
export { elbowCount, equivalentLength, equivalentLengthRecord } from './equivalentLength';
export type { Formula } from './formula';
export * from './heat';
export { type Band, type Judgement, judge, type Limit, narrow } from './limit';
export * from './people';
export * from './power';
export type { Example, FormulaRecord, FormulaResult, FormulaSource, Note, RecordUnit } from './record';
export { createRefusal, type Refusal, type RefusalCode, type RefusalParams } from './refusal';
export { type Bit, refusalBits, refusalSentence } from './refusalSentence';
export type { RuleRecord, Ruling } from './rule';
export * from './sanitary';
export * from './water';
export { withoutRowIds } from './withoutRowIds';

/** Every formula, by the order of the manual. Each folder below keeps its own list. */
export const FORMULAS: readonly Formula[] = [
  formula(equivalentLengthRecord, equivalentLength),
  formula(bendFactorRecord, bendFactor),
  formula(cordReserveRecord, cordReserve),
  ...AIR_FORMULAS,
  ...CAPACITY_FORMULAS,
  ...WATER_FORMULAS,
  ...HEAT_FORMULAS,
  ...DRAIN_FORMULAS,
  ...POWER_FORMULAS,
  ...PEOPLE_FORMULAS,
];

/** Every bound out of a document that is no formula. */
export const LIMITS: readonly Limit[] = [
  ...AIR_LIMITS,
  ...WATER_LIMITS,
  ...HEAT_LIMITS,
  ...DRAIN_LIMITS,
  ...POWER_LIMITS,
  ...PEOPLE_LIMITS,
  ...SANITARY_LIMITS,
];

/** Every rule that is no single number. */
export const RULES: readonly RuleRecord[] = [
  ...AIR_RULES,
  ...WATER_RULES,
  ...DRAIN_RULES,
  ...POWER_RULES,
  ...PEOPLE_RULES,
  ...SANITARY_RULES,
];
