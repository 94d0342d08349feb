import type { ConnectionKind } from '../catalog';
import { memoizeByIdentity, type PlacedMachine } from '../scene';
import { areaPlace, pointPlace } from './support/places';
import type { MachinesPlace, Place } from './types';

/** Where the machines of a measurement stand; the same place while they do. */
export const findMachines = memoizeByIdentity(({ ids, connection }: MachinesPlace, machines: readonly PlacedMachine[]): Place => {
  const [first, ...others] = machines.filter(({ machine }) => ids.includes(machine.id));
  if (first === undefined) return areaPlace();
  if (connection !== undefined) return connectionPlace(first, connection);
  return others.length === 0 ? footprintPlace(first) : areaPlace(...[first, ...others].map(({ footprint }) => footprint));
});

const footprintPlace = memoizeByIdentity(({ footprint }: PlacedMachine) => areaPlace(footprint));

const connectionPlace = memoizeByIdentity((placed: PlacedMachine, kind: ConnectionKind) => {
  const found = placed.connections.find(({ connection }) => connection.kind === kind);
  return found === undefined ? footprintPlace(placed) : pointPlace(found.point);
});
