import type { DataSheet } from '../../catalog';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../scene';
import type { FigureReading } from '../figure';
import type { Message } from '../message';
import { askFor } from './readings';

/** Asks for what a data sheet leaves open. */
export const askDataSheet = (scene: Scene, placed: PlacedMachine, input: Message, field: keyof DataSheet): FigureReading =>
  askFor([placed.machine.id], input, dataSheetPath(scene, placed, field));
