import type { Plan, Table } from '../../../../plan';
import { createMessages, editTable, type Repair } from '../../../../rules';
import type { PlacedTable, Scene, Station } from '../../../../scene';
import { fitsAfter } from '../../../room';

export interface LengthenMessages {
  'repair/lengthen-table': { role: Table['role']; by: number };
}

const say = createMessages<LengthenMessages>();

/**
 * Lengthens a table so that its landing holds the racks wanted; what lies beyond the landing moves out with
 * the end. None where the longer table would not fit into the room.
 */
export function lengthenTable(
  scene: Scene,
  { table }: Pick<PlacedTable, 'table'>,
  landing: Omit<Station, 'place'>,
  wanted: number,
): Repair[] {
  const by = wanted * scene.plan.settings.rackPitch - (landing.length ?? 0);
  const repair: Repair = {
    id: 'lengthen-table',
    label: say('repair/lengthen-table', { role: table.role, by }),
    edit: (draft: Plan) => editTable(draft, table.id, (item) => lengthen(item, landing.subject, by)),
  };
  return fitsAfter(scene, repair.edit) ? [repair] : [];
}

function lengthen(table: Table, landing: string | null, by: number): void {
  const last = table.legs.at(-1);
  if (last !== undefined) last.length += by;
  const grown = table.fittings.find(({ id }) => id === landing);
  const from = grown === undefined ? 0 : grown.at;
  for (const fitting of table.fittings) {
    if (fitting === grown) grown.length += by;
    if (fitting.at >= from && fitting.kind !== 'overshelf') fitting.at += fitting === grown ? by / 2 : by;
  }
}
