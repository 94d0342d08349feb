import type { MachineSheet } from '../../catalog';
import { type PlacedMachine, type Scene, sheetPath } from '../../scene';
import type { FigureReading } from '../figure';
import type { Message } from '../message';
import { askFor } from './readings';

/** Asks for what a data sheet leaves open. */
export const askSheet = (scene: Scene, placed: PlacedMachine, input: Message, field: keyof MachineSheet): FigureReading =>
  askFor([placed.machine.id], input, sheetPath(scene, placed, field));
