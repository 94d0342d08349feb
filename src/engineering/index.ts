import { bendFactor, bendFactorRecord } from './bendFactor';
import { cordReserve, cordReserveRecord } from './cordReserve';
import { equivalentLength, equivalentLengthRecord } from './equivalentLength';
import { hoodLength, hoodLengthRecord } from './hoodLength';
import type { FormulaRecord, Outcome } from './record';

export { BEND_RULES, type BendRule, bendFactor } from './bendFactor';
export { cordReserve } from './cordReserve';
export { elbowCount, equivalentLength } from './equivalentLength';
export { hoodLength } from './hoodLength';
export type { Example, FormulaRecord, FormulaSource, Note, Outcome } from './record';

/** One formula with its record, for the manual and the tests. */
export interface Formula {
  record: FormulaRecord<Record<string, unknown>>;
  run: (inputs: Record<string, unknown>) => Outcome;
}

/** Every formula, by the order of the manual. */
export const FORMULAS: readonly Formula[] = [
  formula(equivalentLengthRecord, equivalentLength),
  formula(bendFactorRecord, bendFactor),
  formula(cordReserveRecord, cordReserve),
  formula(hoodLengthRecord, hoodLength),
];

/** Forgets the names of the inputs, so that formulas of all shapes stand in one list; each checks its own inputs. */
function formula<Inputs extends object>(record: FormulaRecord<Inputs>, run: (inputs: Inputs) => Outcome): Formula {
  return { record: record as unknown as Formula['record'], run: run as unknown as Formula['run'] };
}
