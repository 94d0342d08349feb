import type { Plan } from './planSchema';
import { listIds } from './problems/findIdProblems';

/** A free id: the prefix and the lowest number from 1 that no thing of the plan has. The same plan gives the same id. */
export function createId(plan: Plan, prefix: string): string {
  const taken = new Set(listIds(plan).map(({ id }) => id));
  const stem = prefix.slice(0, 56);
  let number = 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
