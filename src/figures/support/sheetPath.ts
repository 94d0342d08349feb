import type { Appliance, Scene } from '../../scene';

/** Path of a field of a machine's data sheet; where the sheet is a family of the catalogue, of the choice of another. */
export function sheetPath({ plan }: Scene, { machine, sheet }: Appliance, ...rest: (string | number)[]): (string | number)[] {
  const own = plan.sheets.findIndex(({ id }) => id === sheet.id);
  if (own >= 0) return ['sheets', own, ...rest];
  return ['machines', plan.machines.findIndex(({ id }) => id === machine.id), 'sheet'];
}
