import type { ConnectionKind } from '../../catalog';
import type { MachinesPlace } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import type { Appliance, Scene } from '../../scene';

/** Where a machine stands. */
export const machinePlace = ({ machine }: Appliance): MachinesPlace => ({ kind: 'machines', ids: [machine.id] });

/** Where all machines of the plan stand. */
export const machinesPlace = ({ appliances }: Pick<Scene, 'appliances'>): MachinesPlace => ({
  kind: 'machines',
  ids: appliances.map(({ machine }) => machine.id),
});

/** The place of a machine’s own connection; its footprint where it has none of that kind. */
export const connectionPlace = (placed: Appliance, connection: ConnectionKind): MachinesPlace => ({
  ...machinePlace(placed),
  connection,
});

/** What a figure says of one machine. */
export const readingsFor = (scene: Scene, figure: string, { machine }: Appliance): FigureReading[] =>
  readingsOf(scene, figure).filter(({ subjects }) => subjects[0] === machine.id);
