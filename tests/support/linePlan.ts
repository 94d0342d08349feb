import { produce } from 'immer';
import { type DataSheet, findFamily, type Side } from '../../src/catalog';
import { createLinePlan, type LinePlanOptions, type Plan, type Table } from '../../src/plan';

const FAMILY = 'recirculating-hot-water';

/** A whole clear line, with what a case changes of it. A corner at the left, left to right, unless the case says otherwise. */
export function linePlan(options: Partial<LinePlanOptions> = {}, change: (plan: Plan) => void = () => {}): Plan {
  const base = createLinePlan({ family: FAMILY, configuration: 'left-front', hand: 'left-to-right', ...options });
  return produce(base, (draft) => {
    change(draft);
  });
}

/** A data sheet of one's own: that of the recirculating family, changed. */
export function ownDataSheet(change: Partial<DataSheet>): DataSheet {
  const family = findFamily(FAMILY);
  if (family === undefined) throw new Error(`there is no family ${FAMILY}`);
  return { ...family, id: 'own-sheet', ...change };
}

/** The heat-recovery family with a share of its own; null: its sheet does not say. */
export function recoverySheet(recovered: number | null, change: Partial<DataSheet> = {}): DataSheet {
  const family = findFamily('heat-recovery');
  if (family === undefined || family.vent.kind !== 'recovery') throw new Error('there is no family that wins heat back');
  return { ...family, id: 'own-sheet', vent: { ...family.vent, recovered }, ...change };
}

/** The table of a role; a plan without one is a mistake of the case. */
export function tableOf(plan: Plan, role: Table['role']): Table {
  const table = plan.tables.find((item) => item.role === role);
  if (table === undefined) throw new Error(`the plan has no ${role} table`);
  return table;
}

type Joint = Partial<Record<'gap' | 'offset' | 'skewDeg', number>>;

/** Changes how a table of a role meets its machine. */
export function joinBy(plan: Plan, role: Table['role'], change: Joint): void {
  const { place } = tableOf(plan, role);
  if (place.kind !== 'joined') throw new Error(`the ${role} table is not joined`);
  Object.assign(place, change);
}

/** Joins a table of a role flush to another side. */
export function joinAt(plan: Plan, role: Table['role'], side: Side): void {
  tableOf(plan, role).place = { kind: 'joined', machine: 'machine', side, gap: 0, offset: 0, skewDeg: 0 };
}

/** A table somewhere in the room, joined to nothing. */
export const FREE: Table['place'] = { kind: 'free', x: 500, y: 3000, headingDeg: 0 };
