import { applyChange, type Change, revertChange, type Transaction } from './edit';
import type { Plan } from './planSchema';

/** How many changes can be undone. */
export const HISTORY_LIMIT = 500;

/** A plan with what was done to it. Immutable: each function below gives another. */
export interface History {
  /** The last one was done last. */
  readonly past: readonly Change[];
  readonly present: Plan;
  /** The first one would be redone next. */
  readonly future: readonly Change[];
}

/** A plan to which nothing has been done. */
export function createHistory(plan: Plan): History {
  return { past: [], present: plan, future: [] };
}

/** Records a transaction that was made from the present plan. One that changed nothing leaves the history as it is. */
export function push(history: History, transaction: Transaction, limit = HISTORY_LIMIT): History {
  if (transaction.patches.length === 0) return history;
  const { label, patches, inverse, plan } = transaction;
  return { past: [...history.past, { label, patches, inverse }].slice(-limit), present: plan, future: [] };
}

/** Takes the last change back; the same history when there is none. */
export function undo(history: History): History {
  const change = history.past.at(-1);
  if (change === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: revertChange(history.present, change),
    future: [change, ...history.future],
  };
}

/** Does the change that was taken back last again; the same history when there is none. */
export function redo(history: History): History {
  const [change, ...future] = history.future;
  if (change === undefined) return history;
  return { past: [...history.past, change], present: applyChange(history.present, change), future };
}
