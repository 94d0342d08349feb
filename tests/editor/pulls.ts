import type { Aim } from '../../src/editor/gestures/aim';
import type { Hold } from '../../src/editor/gestures/gesture';
import type { Solution } from '../../src/editor/gestures/solution';
import { solveGesture } from '../../src/editor/gestures/solveGesture';
import type { Point } from '../../src/geometry';
import { edit, type Plan } from '../../src/plan';

/** What is pulled: things by their ids, or the handle of one. */
type Pulled = { ids: readonly string[] } | { id: string; handle: string };

interface Options extends Partial<Aim> {
  /** Where the pointer went down. */
  from?: Point;
  held?: Hold | null;
}

/** Catches within 30 mm, without a step. */
const AIM: Aim = { reach: 30, step: 0, isFree: false, isStraight: false };

/** A drag by so much, solved: what it says and the plan that it leads to. */
export function pull(plan: Plan, what: Pulled, dx: number, dy: number, options: Options = {}): Solution & { plan: Plan } {
  const { from = { x: 0, y: 0 }, held = null, ...aim } = options;
  const common = { start: plan, from, to: { x: from.x + dx, y: from.y + dy }, held };
  const gesture = 'ids' in what ? ({ ...common, kind: 'move', ...what } as const) : ({ ...common, kind: 'handle', ...what } as const);
  const solution = solveGesture(gesture, { ...AIM, ...aim });
  if (solution === null) throw new Error('nothing to pull');
  return { ...solution, plan: edit(plan, solution.label, solution.recipe).plan };
}
