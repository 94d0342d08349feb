import type { Side } from '../../catalog';
import type { Table } from '../../plan';
import type { Configuration } from '../types';

/** What of a joined table decides the configuration. */
export interface JoinedTable {
  side: Side;
  role: Table['role'];
  /** The machine has a door on that side. */
  hasDoor: boolean;
}

type Reason = Extract<Configuration, { kind: 'none' }>['reason'];

/**
 * The configuration that a machine's joined tables make: left and right is straight through, one
 * of them and the front is a corner, anything else is none, with the first reason that holds.
 * Racks pass only through doors, so a table at a side without one does not count.
 */
export function deriveConfiguration(tables: readonly JoinedTable[]): Configuration {
  const reason = whyNone(tables);
  if (reason !== null) return { kind: 'none', reason };
  const sides = tables.filter(({ hasDoor }) => hasDoor).map(({ side }) => side);
  if (!sides.includes('front')) return { kind: 'straight' };
  return { kind: 'corner', side: sides.includes('left') ? 'left' : 'right' };
}

function whyNone(tables: readonly JoinedTable[]): Reason | null {
  if (tables.length === 0) return 'no-table';
  if (tables.some(({ side }) => side === 'back')) return 'back';
  if (hasTwice(tables.map(({ side }) => side))) return 'same-side';
  const withDoor = tables.filter(({ hasDoor }) => hasDoor);
  if (withDoor.length > 2) return 'three-sides';
  if (withDoor.length < 2) return withDoor.length < tables.length ? 'no-door' : 'one-table';
  return hasTwice(withDoor.map(({ role }) => role)) ? 'two-roles' : null;
}

const hasTwice = (words: readonly string[]) => new Set(words).size < words.length;
