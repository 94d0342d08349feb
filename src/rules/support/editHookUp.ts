import type { Machine, Plan } from '../../plan';

/** Hooks one machine of a draft up otherwise; does nothing when it is gone. */
export function editHookUp(draft: Plan, id: string, change: Partial<Machine['hookUp']>): void {
  const machine = draft.machines.find((item) => item.id === id);
  if (machine !== undefined) Object.assign(machine.hookUp, change);
}
