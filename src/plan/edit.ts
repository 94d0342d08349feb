import { applyPatches, enablePatches, type Patch, produceWithPatches } from 'immer';
import type { Plan } from './planSchema';
import type { PlanProblem } from './problems/planProblem';
import { roundFloatNoise } from './roundFloatNoise';
import { validatePlan } from './validatePlan';

enablePatches();

/** A change of a plan, written as if the draft could be changed. It says nothing when what it should change is gone. */
export type Recipe = (draft: Plan) => void;

/** One change, knowing its own inverse. The patches are plain data and survive JSON. */
export interface Change {
  /** For people: "Move the machine". */
  label: string;
  patches: Patch[];
  inverse: Patch[];
}

/** A change and the plan that it gave. */
export interface Transaction extends Change {
  plan: Plan;
}

/** Carries out a recipe, without the dust of its arithmetic. What it does not touch keeps its identity; the plan that was given stays as it was. */
export function edit(plan: Plan, label: string, recipe: Recipe): Transaction {
  const [next, patches, inverse] = produceWithPatches(plan, (draft) => {
    recipe(draft);
    roundFloatNoise(draft);
  });
  return { label, patches, inverse, plan: patches.length === 0 ? plan : next };
}

/** Several recipes as one change. */
export function together(recipes: readonly Recipe[]): Recipe {
  return (draft) => {
    for (const recipe of recipes) recipe(draft);
  };
}

export type EditResult = { ok: true; transaction: Transaction } | { ok: false; problem: PlanProblem };

/** As `edit`, but a change that would leave an unsound plan is refused with the reason. */
export function tryEdit(plan: Plan, label: string, recipe: Recipe): EditResult {
  const transaction = edit(plan, label, recipe);
  const problem = validatePlan(transaction.plan);
  return problem === null ? { ok: true, transaction } : { ok: false, problem };
}

/** The plan after a change that was made to an equal plan. */
export function applyChange(plan: Plan, change: Change): Plan {
  return applyPatches(plan, change.patches);
}

/** The plan before a change. */
export function revertChange(plan: Plan, change: Change): Plan {
  return applyPatches(plan, change.inverse);
}
