import type { MachineClass } from '../../engineering';
import type { PlacedMachine } from '../../scene';

/** The class by which the food code tells machines apart: a door machine takes its rack standing still. */
export const classOf = ({ sheet }: PlacedMachine): MachineClass =>
  sheet.rinseKind === 'single-temperature' ? 'stationary-single' : 'stationary-dual';
