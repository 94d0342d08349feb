import { type Polygon, slicePath, strip } from '../../../../geometry';
import type { Fitting } from '../../../../plan';
import { type LaidFitting, OVERSHELF_HEIGHT, type PlacedTable, spanOf } from '../../../../scene';
import { isOver } from '../../../room';

/** Two fittings of one table that take the same stretch of it. */
export interface SharedStretch {
  one: LaidFitting;
  other: LaidFitting;
  from: number;
  to: number;
}

/** The stretch that two fittings both take, more than the drawing's tolerance; null when they are apart or one hangs above the other. */
export function findSharedStretch(one: LaidFitting, other: LaidFitting): SharedStretch | null {
  const [from, to] = [Math.max(one.from, other.from), Math.min(one.to, other.to)];
  return isOver(to - from) && !isOneAboveOther(one.fitting, other.fitting) ? { one, other, from, to } : null;
}

/** An overshelf hangs above the deck, and above another whose racks it clears. */
export function isOneAboveOther(one: Fitting, other: Fitting): boolean {
  if (one.kind !== 'overshelf' || other.kind !== 'overshelf') return one.kind === 'overshelf' || other.kind === 'overshelf';
  return !isOver(OVERSHELF_HEIGHT - Math.abs(one.height - other.height));
}

/** The part of the table, on the plan, that two fittings both take. */
export function sharedArea({ table, path }: PlacedTable, { one, other, from, to }: SharedStretch): Polygon {
  const [left, right] = spanOf(one.fitting, table);
  const [otherLeft, otherRight] = spanOf(other.fitting, table);
  return strip(slicePath(path, from, to), Math.min(left, otherLeft), Math.min(right, otherRight)).outline;
}
