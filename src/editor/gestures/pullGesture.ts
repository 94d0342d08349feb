import { edit, findPlanProblems } from '../../plan';
import type { Preview } from '../types';
import type { Aim } from './aim';
import type { Gesture } from './gesture';
import { solveGesture } from './solveGesture';

export interface Pulled {
  readonly gesture: Gesture;
  readonly preview: Preview | null;
}

/**
 * A drag, one move on: the whole change from the plan at its start, as a preview. A move that would
 * leave an unsound plan (walls that cross, a door beyond its wall) leaves the preview at the last sound one.
 */
export function pullGesture(gesture: Gesture, to: Gesture['to'], aim: Aim, last: Preview | null): Pulled {
  const moved = { ...gesture, to };
  const solution = solveGesture(moved, aim);
  if (solution === null) return { gesture: moved, preview: last };
  const transaction = edit(gesture.start, solution.label, solution.recipe);
  if (findPlanProblems(transaction.plan).length > 0) return { gesture: moved, preview: last };
  const preview: Preview = {
    plan: transaction.plan,
    transaction,
    guides: solution.guides ?? [],
    readouts: solution.readouts ?? [],
    box: null,
  };
  return { gesture: { ...moved, held: solution.hold ?? null }, preview };
}
