import { areaPlace, type Place, pointPlace } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import { type Machine, pathOf } from '../../plan';
import type { PlacedMachine, Scene } from '../../scene';

/** Path of one field of how a machine is hooked up. */
export const hookUpPath = ({ plan }: Scene, { machine }: PlacedMachine, field: keyof Machine['hookUp']): (string | number)[] =>
  pathOf(plan, 'machines', machine.id, 'hookUp', field);

/** The place of a machine’s own connection; its footprint where it has none of that kind. */
export function connectionPlace({ connections, footprint }: PlacedMachine, kind: 'drain' | 'power'): Place {
  const found = connections.find(({ connection }) => connection.kind === kind);
  return found === undefined ? areaPlace(footprint) : pointPlace(found.point);
}

/** What a figure says of one machine. */
export const readingsFor = (scene: Scene, figure: string, { machine }: PlacedMachine): FigureReading[] =>
  readingsOf(scene, figure).filter(({ subjects }) => subjects[0] === machine.id);
