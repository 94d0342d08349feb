import { type Plan, planSchema } from './planSchema';
import { findIdProblems } from './problems/findIdProblems';
import { findLineProblems } from './problems/findLineProblems';
import { findRoomProblems } from './problems/findRoomProblems';
import { createProblem, describeValue, type PlanProblem } from './problems/planProblem';
import { schemaProblem } from './problems/schemaProblem';

/** The first thing that makes a value no sound plan; null when it is one. */
export function validatePlan(plan: unknown): PlanProblem | null {
  const result = checkPlan(plan);
  return result.ok ? null : result.problem;
}

export type CheckedPlan = { ok: true; plan: Plan } | { ok: false; problem: PlanProblem };

/** The value as a plan, its keys in the order of the schema; or the first thing that is wrong with it. */
export function checkPlan(value: unknown): CheckedPlan {
  const result = planSchema.safeParse(value);
  if (result.success) {
    const problem = findPlanProblems(result.data)[0];
    return problem === undefined ? { ok: true, plan: result.data } : { ok: false, problem };
  }
  const [issue] = result.error.issues;
  const problem = issue ? schemaProblem(issue, value) : createProblem('not-a-plan', [], { found: describeValue(value) });
  return { ok: false, problem };
}

/** Everything that contradicts itself in a plan of the right form: ids, references, room, line. */
export function findPlanProblems(plan: Plan): PlanProblem[] {
  return [...findIdProblems(plan), ...findRoomProblems(plan.room), ...findLineProblems(plan)];
}
