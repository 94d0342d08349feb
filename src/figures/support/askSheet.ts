import type { MachineSheet } from '../../catalog';
import type { Appliance, Scene } from '../../scene';
import type { FigureReading } from '../types';
import { askFor } from './readings';
import { sheetPath } from './sheetPath';

/** Asks for what a data sheet leaves open. */
export const askSheet = (scene: Scene, placed: Appliance, input: string, field: keyof MachineSheet): FigureReading =>
  askFor([placed.machine.id], input, sheetPath(scene, placed, field));
