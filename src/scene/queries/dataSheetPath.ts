import type { PlacedMachine, Scene } from '../types';
import { machinePath } from './itemPaths';

/** Path of a field of a machine's data sheet; where the sheet is a family of the catalogue, of the choice of another. */
export function dataSheetPath(
  { plan }: Pick<Scene, 'plan'>,
  placed: Pick<PlacedMachine, 'at' | 'sheet'>,
  ...rest: (string | number)[]
): (string | number)[] {
  const own = plan.sheets.findIndex(({ id }) => id === placed.sheet.id);
  if (own >= 0) return ['sheets', own, ...rest];
  return machinePath(placed, 'sheet');
}
