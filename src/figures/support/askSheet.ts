import type { MachineSheet } from '../../catalog';
import { pathOf } from '../../plan';
import type { PlacedMachine, Scene } from '../../scene';
import type { FigureReading } from '../types';
import { askFor } from './readings';

/** Asks for what a data sheet leaves open: in a sheet of the user’s own there, else by the choice of another sheet. */
export function askSheet({ plan }: Scene, { machine, sheet }: PlacedMachine, input: string, field: keyof MachineSheet): FigureReading {
  const own = plan.sheets.findIndex(({ id }) => id === sheet.id);
  return askFor([machine.id], input, own < 0 ? pathOf(plan, 'machines', machine.id, 'sheet') : ['sheets', own, field]);
}
