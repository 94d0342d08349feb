import { CHECKS, type Check, type Finding, runChecks } from '../../checks';
import type { Plan } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { numberFindings } from '../../sheets';
import { type Formatter, formatterFor } from '../../units';
import { usePanelPlan } from './panelPlan';
import { useApp } from './store';

/** What is worked out from a plan. */
export interface Work {
  scene: Scene;
  findings: Finding[];
}

/** The plan as the panels show it (a gesture's preview or the present one), worked out once per plan. */
export function usePanelWork(): Work {
  // Findings are others once all checks are here.
  useApp((s) => s.services);
  return deriveWork(usePanelPlan());
}

/** Formatter of the units that the shown plan is read in. */
export const useFormat = (): Formatter => formatterFor(usePanelPlan().settings.units);

/** The checks that are here: those of the line and its room at first, all of them once they have been fetched. */
let checks: readonly Check[] = CHECKS;
let known = new WeakMap<Plan, Work>();

/** Takes the checks that have been fetched; what was worked out with fewer is forgotten. */
export function takeChecks(all: readonly Check[]): void {
  checks = all;
  known = new WeakMap();
}

/** Pure, and remembered by the identity of the plan. */
export function deriveWork(plan: Plan): Work {
  const before = known.get(plan);
  if (before) return before;
  const scene = deriveScene(plan);
  const work = { scene, findings: runChecks(scene, checks) };
  known.set(plan, work);
  return work;
}

/** What the canvas shows of a plan while something in it is dragged. */
export interface MotionWork extends Work {
  /** The numbers of its findings, as the list has them. */
  numbers: ReadonlyMap<string, number>;
}

/**
 * While something is dragged the canvas shows what the line and its room say, at each move; what stands on figures follows
 * with the panels. `before` is the plan as it was, whose other findings are counted so that the numbers stay those of the list.
 */
export function deriveMotionWork(before: Work, plan: Plan): MotionWork {
  const scene = deriveScene(plan);
  const findings = runChecks(scene, CHECKS);
  return { scene, findings, numbers: numberFindings([...findings, ...before.findings.filter(({ check }) => !OWN.has(check))]) };
}

const OWN: ReadonlySet<string> = new Set(CHECKS.map(({ id }) => id));
