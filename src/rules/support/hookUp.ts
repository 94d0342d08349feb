import type { Machine } from '../../plan';
import { machinePath, type PlacedMachine } from '../../scene';
import type { FigureReading } from '../figure';
import { askFor } from './readings';

type HookUp = Machine['hookUp'];

/** What people call them. */
const WORDS = {
  wire: 'size of the wire',
  wireWay: 'way of the wires from the panel to the machine',
} as const satisfies Partial<Record<keyof HookUp, string>>;

/** Asks for one field of how a machine is hooked up. */
export const askHookUp = (placed: PlacedMachine, field: keyof typeof WORDS): FigureReading =>
  askFor([placed.machine.id], WORDS[field], machinePath(placed, 'hookUp', field));
