import type { PlacedMachine } from '../../../../scene';
import { toSI } from '../../../../units';
import type { RackWaterInputs } from '../../formulas/rackWater';

/** Inputs of the rinse water of so many racks. Fillings of the tank are left out: how many there are is not known. */
export const rinseOf = ({ sheet }: PlacedMachine, racks: number): RackWaterInputs => ({
  perRackM3: toSI(sheet.rinseWaterL, 'L'),
  racks,
  fillM3: 0,
  fills: 0,
});

export const NO_FILLS = 'Rinse water alone, without fillings of the tank.';

export const ALL_WARE = 'As if all the ware went through this machine.';
