import { CHECKS, type Finding, runChecks } from '../../checks';
import type { Plan } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { type Formatter, formatterFor } from '../../units';
import { usePanelPlan } from './panelPlan';

/** What is worked out from a plan. */
export interface Work {
  scene: Scene;
  findings: Finding[];
}

/** The plan as the panels show it (a gesture's preview or the present one), worked out once per plan. */
export const usePanelWork = (): Work => deriveWork(usePanelPlan());

/** Formatter of the units that the shown plan is read in. */
export const useFormat = (): Formatter => formatterFor(usePanelPlan().settings.units);

const known = new WeakMap<Plan, Work>();

/** Pure, and remembered by the identity of the plan. */
export function deriveWork(plan: Plan): Work {
  const before = known.get(plan);
  if (before) return before;
  const scene = deriveScene(plan);
  const work = { scene, findings: runChecks(scene, CHECKS) };
  known.set(plan, work);
  return work;
}
