import { numberFindings } from '../../drawing';
import type { Plan } from '../../plan';
import { type Check, type Finding, findRepairs, type Repair, runChecks } from '../../rules';
import { deriveScene, type Scene } from '../../scene';
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
  useApp((s) => s.loadedChecks);
  return deriveWork(usePanelPlan());
}

/** Formatter of the units that the shown plan is read in. */
export const useFormat = (): Formatter => formatterFor(usePanelPlan().settings.units);

/** The checks that are here, and those of them that are quick enough for every move of a hand: of the line and its room. */
let here: { all: readonly Check[]; quick: readonly Check[] } = { all: [], quick: [] };
let known = new WeakMap<Plan, Work>();

/** Takes checks that have been fetched; what was worked out with fewer is forgotten. */
export function takeChecks(all: readonly Check[], quick: readonly Check[]): void {
  here = { all, quick };
  known = new WeakMap();
}

/** Pure, and remembered by the identity of the plan. */
export function deriveWork(plan: Plan): Work {
  const before = known.get(plan);
  if (before) return before;
  const scene = deriveScene(plan);
  const work = { scene, findings: runChecks(scene, here.all) };
  known.set(plan, work);
  return work;
}

/** The repairs that would better a finding; they are tried when it is opened. */
export const repairsOf = (scene: Scene, { id, repairs }: Finding): readonly Repair[] =>
  repairs.length === 0 ? [] : findRepairs(scene, here.all, id);

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
  const findings = runChecks(scene, here.quick);
  const isQuick = (id: string) => here.quick.some((check) => check.id === id);
  return { scene, findings, numbers: numberFindings([...findings, ...before.findings.filter(({ check }) => !isQuick(check))]) };
}
