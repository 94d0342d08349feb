import type { MachineSheet } from '../catalog';
import type { Machine } from '../plan';
import { createListKeeper } from './memoizeByIdentity';
import type { Appliance } from './types';

/** The machines without their places; the same list as before while no more than their places changed. */
export const deriveAppliances = (hosts: readonly { machine: Machine; sheet: MachineSheet }[]): Appliance[] =>
  keep(
    hosts.map(({ machine: { id, sheet, controls, electrical, hookUp }, ...host }, at) => ({
      at,
      machine: { id, sheet, controls, electrical, hookUp },
      sheet: host.sheet,
    })),
  );

const keep = createListKeeper<Appliance>(
  (one, other) =>
    one.at === other.at &&
    one.sheet === other.sheet &&
    one.machine.id === other.machine.id &&
    one.machine.sheet === other.machine.sheet &&
    one.machine.controls === other.machine.controls &&
    one.machine.electrical === other.machine.electrical &&
    one.machine.hookUp === other.machine.hookUp,
);
