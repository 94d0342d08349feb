import { type Appliance, appliancePath, type Scene } from '../../scene';

/** Path of a field of a machine's data sheet; where the sheet is a family of the catalogue, of the choice of another. */
export function sheetPath({ plan }: Scene, placed: Appliance, ...rest: (string | number)[]): (string | number)[] {
  const own = plan.sheets.findIndex(({ id }) => id === placed.sheet.id);
  if (own >= 0) return ['sheets', own, ...rest];
  return appliancePath(placed, 'sheet');
}
