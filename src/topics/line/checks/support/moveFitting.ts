import type { Fitting, Plan } from '../../../../plan';
import { createMessages, editTable, type Name, nameFitting, type Repair, staysClear } from '../../../../rules';
import type { LaidFitting, PlacedTable, Scene } from '../../../../scene';
import { fitsAfter } from '../../../room';
import { check as doorLiftClear } from '../door-lift-clear';
import { check as landingRacks } from '../landing-racks';
import { check as oneWayFlow } from '../one-way-flow';
import { check as tableFalls } from '../table-falls';
import { isOneAboveOther } from './fittings';
import { listFreeStretches } from './stretches';

/** `fromJoint`: from there to the near end of the fitting. */
export interface MoveFittingMessages {
  'repair/move-fitting': { fitting: Name; fromJoint: number };
}

const say = createMessages<MoveFittingMessages>();

/** What a fitting that moves can break beside the room: the way of the water and of the ware, the racks' place, the machine's doors under a shelf. */
const TABLE_CHECKS = [tableFalls, landingRacks, oneWayFlow, doorLiftClear];

/**
 * Moves a fitting along its table to the nearest free stretch that keeps the order of the line; none where
 * there is no such stretch, or where it would bring another fault.
 */
export function moveFitting(scene: Scene, table: PlacedTable, moved: LaidFitting): Repair[] {
  const others = table.fittings.filter((item) => item !== moved);
  const taken = others.filter(({ fitting }) => !isOneAboveOther(moved.fitting, fitting));
  const { at, length } = moved.fitting;
  const places = listFreeStretches(table, taken, length).map(({ from, to }) => Math.max(from + length / 2, Math.min(at, to - length / 2)));
  return places
    .filter((place) => countWrongOrder(moved.fitting, place, others) <= countWrongOrder(moved.fitting, at, others))
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
    .map((place) => createRepair(table, moved, place))
    .filter(({ edit }) => fitsAfter(scene, edit) && staysClear(scene, edit, TABLE_CHECKS))
    .slice(0, 1);
}

export const moveFittingId = ({ id }: Pick<Fitting, 'id'>) => `move-${id}`;

function createRepair({ table }: PlacedTable, { fitting }: LaidFitting, at: number): Repair {
  return {
    id: moveFittingId(fitting),
    label: say('repair/move-fitting', { fitting: nameFitting(fitting), fromJoint: at - fitting.length / 2 }),
    edit: (draft: Plan) =>
      editTable(draft, table.id, ({ fittings }) => {
        for (const item of fittings) if (item.id === fitting.id) item.at = at;
      }),
  };
}

/** Order of fittings from the joint outward, as on a soiled table, where the rack comes the other way. */
const ORDER: Record<Fitting['kind'], number | null> = { landing: 0, sink: 1, scrap: 2, 'drop-off': 3, overshelf: null };

/** With how many of the others a fitting would change places in the order of the line, if it lay there. */
function countWrongOrder(moved: Fitting, at: number, others: readonly LaidFitting[]): number {
  const rank = ORDER[moved.kind];
  return others.filter(({ fitting }) => {
    const other = ORDER[fitting.kind];
    return rank !== null && other !== null && (rank - other) * (at - fitting.at) < 0;
  }).length;
}
