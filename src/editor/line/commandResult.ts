import { type Plan, type Recipe, type Transaction, tryEdit } from '../../plan';
import { problemText } from '../tools/commitPreview';

/** What came of a command: a change to keep, with what to choose after it; or why not, in one sentence. */
export type CommandResult =
  | { readonly ok: true; readonly transaction: Transaction; readonly select?: readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** Carries a recipe out, if it leaves a sound plan. */
export function carryOut(plan: Plan, label: string, recipe: Recipe, select?: readonly string[]): CommandResult {
  const result = tryEdit(plan, label, recipe);
  if (!result.ok) return { ok: false, problem: problemText(result.problem) };
  return { ok: true, transaction: result.transaction, ...(select && { select }) };
}

export const refusal = (problem: string): CommandResult => ({ ok: false, problem });
