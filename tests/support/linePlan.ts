import { produce } from 'immer';
import { createLinePlan, type LinePlanOptions, type Plan, type Table } from '../../src/plan';

/** A whole clear line, with what a case changes of it. */
export function linePlan(options: Partial<LinePlanOptions> = {}, change: (plan: Plan) => void = () => {}): Plan {
  const base = createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand: 'left-to-right', ...options });
  return produce(base, (draft) => void change(draft));
}

/** The table of a role; a plan without one is a mistake of the case. */
export function tableOf(plan: Plan, role: Table['role']): Table {
  const table = plan.tables.find((item) => item.role === role);
  if (table === undefined) throw new Error(`the plan has no ${role} table`);
  return table;
}

/** Changes how a table of a role meets its machine. */
export function joinBy(plan: Plan, role: Table['role'], change: Partial<Record<'gap' | 'offset' | 'skewDeg', number>>): void {
  const { place } = tableOf(plan, role);
  if (place.kind !== 'joined') throw new Error(`the ${role} table is not joined`);
  Object.assign(place, change);
}
