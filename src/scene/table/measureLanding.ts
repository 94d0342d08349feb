import { pointAt } from '../../geometry';
import type { PlacedFitting, PlacedTable, Station } from '../types';

/** A fitting that a rack can't rest on. */
export const isHole = ({ fitting }: PlacedFitting): boolean => fitting.kind === 'sink' || fitting.kind === 'scrap';

/** Whole racks that a length holds; a length set exactly on a multiple holds them all. */
export const countRacks = (length: number, rackPitch: number): number => Math.max(0, Math.floor(length / rackPitch + 1e-9));

/**
 * The rack landing of a table: the fitting drawn for it, as far as it lies on the table; else the
 * free deck that touches the joint, up to the first sink, scrap opening or drop-off.
 */
export function measureLanding(kind: Station['kind'], table: PlacedTable | null, rackPitch: number): Station {
  if (table === null) return { kind, subject: null, place: null, length: null, racks: null };
  const { subject, from, to } = findLanding(table);
  const length = Math.max(0, to - from);
  return { kind, subject, place: pointAt(table.path, (from + to) / 2).point, length, racks: countRacks(length, rackPitch) };
}

function findLanding({ table, fittings, length }: PlacedTable): { subject: string; from: number; to: number } {
  const drawn = fittings.filter(({ fitting }) => fitting.kind === 'landing').sort((a, b) => a.from - b.from)[0];
  if (drawn !== undefined) return { subject: drawn.fitting.id, from: Math.max(0, drawn.from), to: Math.min(length, drawn.to) };
  const ends = fittings.filter((item) => isHole(item) || item.fitting.kind === 'drop-off').map(({ from }) => from);
  return { subject: table.id, from: 0, to: Math.max(0, Math.min(length, ...ends)) };
}
