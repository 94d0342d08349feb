import { findDataSheet, type Plan, type Table, UNKNOWN_MAKE } from '../../plan';

/** Depth 30 in, rack centre line 10 ¾ in from the edge where people stand, backsplash 10 in, falling ¼ in per foot: as lines are laid out. */
const DEPTH = 762;
const RACK_LINE_FROM_EDGE = 273;
const BACKSPLASH = 254;
const FALL = 1 / 48;

/** A new table without fittings. Joined, its deck begins at the height of the machine's track and its edge looks to where people stand. */
export function createPlainTable(plan: Plan, { id, role, place, legs }: Pick<Table, 'id' | 'role' | 'place' | 'legs'>): Table {
  return {
    id,
    role,
    place,
    legs,
    depth: DEPTH,
    rackLineFromEdge: RACK_LINE_FROM_EDGE,
    operatorSide: operatorSideFor(plan, place),
    backsplash: BACKSPLASH,
    deck: { kind: 'fall', jointHeight: deckHeightAt(plan, place), fall: place.kind === 'joined' ? FALL : null },
    make: UNKNOWN_MAKE,
    fittings: [],
  };
}

function deckHeightAt(plan: Plan, place: Table['place']): number | null {
  if (place.kind === 'free') return null;
  const machine = plan.machines.find(({ id }) => id === place.machine);
  return (machine && findDataSheet(plan, machine.sheet)?.deckHeight) ?? null;
}

/**
 * People stand inside the turn. A table on the left or right has its edge toward the front; one on the
 * front has it toward the side where the other table is, or the left.
 */
function operatorSideFor(plan: Plan, place: Table['place']): Table['operatorSide'] {
  if (place.kind === 'free') return 'left';
  if (place.side !== 'front') return place.side === 'left' ? 'left' : 'right';
  const others = plan.tables.filter((table) => table.place.kind === 'joined' && table.place.machine === place.machine);
  return others.some((table) => table.place.kind === 'joined' && table.place.side === 'right') ? 'left' : 'right';
}
