import type { MachineSheet } from '../../catalog';
import { type Appliance, type Scene, sheetPath } from '../../scene';
import type { FigureReading } from '../types';
import { askFor } from './readings';

/** Asks for what a data sheet leaves open. */
export const askSheet = (scene: Scene, placed: Appliance, input: string, field: keyof MachineSheet): FigureReading =>
  askFor([placed.machine.id], input, sheetPath(scene, placed, field));
