import type { DataSheet } from '../../src/catalog';
import { recoverySheet } from './linePlan';

/** What else is wrong where a hood is gone: the room draws nothing in its place, and the make-up air is blown out into the next rooms. */
export const UNHOODED = ['watch waived-exhaust-enough:machine', 'stop make-up-balances:negative:machine'];

/** The heat-recovery family, listed as condensing or not; null: its sheet does not say. */
export function listedSheet(listedCondensing: boolean | null, change: Partial<DataSheet> = {}): DataSheet {
  const sheet = recoverySheet(0.45, change);
  if (sheet.vent.kind !== 'recovery') throw new Error('the sheet wins no heat back');
  return { ...sheet, vent: { ...sheet.vent, listedCondensing } };
}
