import type { MachineSheet } from '../catalog';
import type { Machine } from '../plan';
import type { Appliance } from './types';

/** The plan's and its preview's while something is dragged, and as many again. */
const KEPT = 4;
let lately: Appliance[][] = [];

/** The machines without their places; the same list as before while no more than their places changed. */
export function keepAppliances(hosts: readonly { machine: Machine; sheet: MachineSheet }[]): Appliance[] {
  const kept = lately.find((list) => list.length === hosts.length && list.every((one, i) => isSame(one, hosts[i])));
  const appliances =
    kept ??
    hosts.map(({ machine: { id, sheet, controls, electrical, hookUp }, ...host }) => ({
      machine: { id, sheet, controls, electrical, hookUp },
      sheet: host.sheet,
    }));
  if (lately[0] !== appliances) lately = [appliances, ...lately.filter((list) => list !== appliances)].slice(0, KEPT);
  return appliances;
}

const isSame = (one: Appliance, other: Appliance | undefined) =>
  other !== undefined &&
  one.sheet === other.sheet &&
  one.machine.id === other.machine.id &&
  one.machine.sheet === other.machine.sheet &&
  one.machine.controls === other.machine.controls &&
  one.machine.electrical === other.machine.electrical &&
  one.machine.hookUp === other.machine.hookUp;
