import type { Side } from '../../catalog';
import type { Line, PlacedMachine, PlacedTable } from '../../scene';

/**
 * The line straightened out, as the operator sees it: x to the right in millimetres from the middle of the machine's
 * track. Heights are above the floor.
 */
export interface UnrolledLine {
  machine: PlacedMachine;
  line: Line;
  /** Ends of the machine: its doors on the left and on the right. */
  left: number;
  right: number;
  /** Which machine sides lie at its two ends. */
  sides: { left: Side; right: Side };
  tables: UnrolledTable[];
}

export interface UnrolledTable {
  table: PlacedTable;
  /** −1 for a table to the left of the machine, 1 for one to the right. */
  way: -1 | 1;
  /** x of a place `s` along the table from its joint. */
  x: (s: number) => number;
}

/** Unrolls a line. Racks come from the left when the hand is left-to-right; with no hand known the soiled table is on the left. */
export function unrollLine(line: Line): UnrolledLine {
  const { machine, soiled, clean } = line;
  const [first, second] = line.hand === 'right-to-left' ? [clean, soiled] : [soiled, clean];
  const sides = { left: sideOf(machine, first, 'left'), right: sideOf(machine, second, 'right') };
  const [left, right] = [-reachOf(machine, sides.left), reachOf(machine, sides.right)];
  const tables = [...(first === null ? [] : [createTable(first, -1, left)]), ...(second === null ? [] : [createTable(second, 1, right)])];
  return { machine, line, left, right, sides, tables };
}

function sideOf(machine: PlacedMachine, table: PlacedTable | null, otherwise: Side): Side {
  const found = Object.values(machine.sides).find((side) => table !== null && side.table === table.table.id);
  return found?.side ?? otherwise;
}

/** From the middle of the track, where the rack lines cross, to a side. */
function reachOf({ sheet }: PlacedMachine, side: Side): number {
  const reaches: Record<Side, number> = {
    left: sheet.rackLine.front,
    right: sheet.width - sheet.rackLine.front,
    front: sheet.depth - sheet.rackLine.left,
    back: sheet.rackLine.left,
  };
  return reaches[side];
}

function createTable(table: PlacedTable, way: -1 | 1, edge: number): UnrolledTable {
  const { place } = table.table;
  const gap = place.kind === 'joined' ? place.gap : 0;
  return { table, way, x: (s) => edge + way * (gap + s) };
}
