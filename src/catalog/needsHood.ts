import type { DataSheet } from './dataSheet';

/**
 * Whether the code wants a hood over such a machine. A direct vent takes the vapour itself; a machine that wins back its heat is
 * free of a hood only where it is electric and listed to UL 921 with condensing of its own (IMC 507.1, exceptions), and null where
 * its sheet does not say so.
 */
export function needsHood({ vent }: Pick<DataSheet, 'vent'>): boolean | null {
  if (vent.kind === 'recovery') return vent.listedCondensing === null ? null : !vent.listedCondensing;
  return vent.kind === 'hood';
}
