import type { FormulaRecord, FormulaResult } from './record';

/** One formula with its record, for the manual and the tests. */
export interface Formula {
  record: FormulaRecord<Record<string, unknown>>;
  run: (inputs: Record<string, unknown>) => FormulaResult;
}

/** Forgets the names of the inputs, so that formulas of all shapes stand in one list; each checks its own inputs. */
export function formula<Inputs extends object>(record: FormulaRecord<Inputs>, run: (inputs: Inputs) => FormulaResult): Formula {
  return { record: record as unknown as Formula['record'], run: run as unknown as Formula['run'] };
}
