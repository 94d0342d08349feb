import { createMessages, type Message, type NoParams } from '../../../../rules';
import type { PlacedMachine, Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import type { RackWaterInputs } from '../../formulas/rackWater';

/** Inputs of the rinse water of so many racks. Fillings of the tank are left out: how many there are is not known. */
export const rinseOf = ({ sheet }: PlacedMachine, racks: number): RackWaterInputs => ({
  perRackM3: toSI(sheet.rinseWaterL, 'L'),
  racks,
  fillM3: 0,
  fills: 0,
});

/** What was assumed of the rinse water. */
export interface RinseWaterMessages {
  'rinse-water/no-fills': NoParams;
  'rinse-water/all-ware': NoParams;
}

const message = createMessages<RinseWaterMessages>();

/** The figure counts the rinses alone. */
export const NO_FILLS = message('rinse-water/no-fills');

/** Of several machines each is taken to wash everything. */
export const allWare = ({ machines }: Pick<Scene, 'machines'>): Message | null =>
  machines.length > 1 ? message('rinse-water/all-ware') : null;
