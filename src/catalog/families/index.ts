import type { MachineSheet } from '../machineSheet';
import { sheet as chemicalSanitising } from './chemical-sanitising';
import { sheet as directVent } from './direct-vent';
import { sheet as freshWaterHotWater } from './fresh-water-hot-water';
import { sheet as heatRecovery } from './heat-recovery';
import { sheet as recirculatingHotWater } from './recirculating-hot-water';
import { sheet as tallDoor } from './tall-door';

/** The generic machine families, in the order of the catalogue. */
export const FAMILIES: readonly MachineSheet[] = [
  recirculatingHotWater,
  freshWaterHotWater,
  chemicalSanitising,
  tallDoor,
  directVent,
  heatRecovery,
];

/** The family with this id; undefined when there is none. */
export function findFamily(id: string): MachineSheet | undefined {
  return FAMILIES.find((family) => family.id === id);
}
