import type { PlacedMachine } from '../../../../scene';
import type { MachineClass } from '../../formulas/temperatures';

/** The class by which the food code tells machines apart: a door machine takes its rack standing still. */
export const classOf = ({ sheet }: PlacedMachine): MachineClass =>
  sheet.rinseKind === 'single-temperature' ? 'stationary-single' : 'stationary-dual';
