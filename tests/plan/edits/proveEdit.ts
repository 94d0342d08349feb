import { expect } from 'vitest';
import {
  applyChange,
  type Change,
  edit,
  findPlanProblems,
  type Plan,
  parsePlan,
  planSchema,
  type Recipe,
  renderPlanText,
  revertChange,
} from '../../../src/plan';

/**
 * What holds for every edit: the result is a sound plan; the plan that was given stays as it was; its inverse restores
 * it; the patches replay, also after a trip through JSON; reading what was written gives the same plan. Returns the result.
 */
export function proveEdit(plan: Plan, recipe: Recipe): Plan {
  const before = JSON.stringify(plan);
  const transaction = edit(plan, 'Prove', recipe);
  expect(JSON.stringify(plan)).toBe(before);
  expect(planSchema.safeParse(transaction.plan).error).toBeUndefined();
  expect(findPlanProblems(transaction.plan)).toEqual([]);
  for (const change of [transaction, throughJson(transaction)]) {
    expect(applyChange(plan, change)).toEqual(transaction.plan);
    expect(revertChange(transaction.plan, change)).toEqual(plan);
  }
  expect(parsePlan(renderPlanText(transaction.plan))).toMatchObject({ ok: true, plan: transaction.plan });
  return transaction.plan;
}

function throughJson({ label, patches, inverse }: Change): Change {
  return JSON.parse(JSON.stringify({ label, patches, inverse })) as Change;
}
