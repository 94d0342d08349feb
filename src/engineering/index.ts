import { bendFactor, bendFactorRecord } from './bendFactor';
import { cordReserve, cordReserveRecord } from './cordReserve';
import { equivalentLength, equivalentLengthRecord } from './equivalentLength';
import { type Formula, formula } from './formula';
import { hoodLength, hoodLengthRecord } from './hoodLength';

export { BEND_RULES, type BendRule, bendFactor } from './bendFactor';
export { cordReserve } from './cordReserve';
export { elbowCount, equivalentLength } from './equivalentLength';
export type { Formula } from './formula';
export { hoodLength } from './hoodLength';
export type { Example, FormulaRecord, FormulaSource, Note, Outcome, RecordUnit } from './record';

/** Every formula, by the order of the manual. Each folder below keeps its own list. */
export const FORMULAS: readonly Formula[] = [
  formula(equivalentLengthRecord, equivalentLength),
  formula(bendFactorRecord, bendFactor),
  formula(cordReserveRecord, cordReserve),
  formula(hoodLengthRecord, hoodLength),
];
