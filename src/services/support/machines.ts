import { type FigureReading, readingsOf } from '../../figures';
import type { PlacedMachine, Scene } from '../../scene';

/** What a figure says of one machine. */
export const readingsFor = (scene: Scene, figure: string, { machine }: PlacedMachine): FigureReading[] =>
  readingsOf(scene, figure).filter(({ subjects }) => subjects[0] === machine.id);
