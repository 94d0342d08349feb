import { type DuctLayers, dewPoint, FILM_RESISTANCES, INSULATIONS } from '../../engineering';
import { pathOf } from '../../plan';
import type { PlacedRun, Scene } from '../../scene';
import type { FigureReading } from '../types';
import { askFor, refuse } from './readings';
import { needAir } from './roomAir';
import { measureSize, needExhaust, subjectsOf } from './runDuct';

/** Mineral or glass fiber: the usual insulation about a duct, and the one that keeps most. */
const INSULATION = INSULATIONS.find(({ id }) => id === 'mineral-fiber');

export const WALL_NOTE = 'Insulation of mineral or glass fiber; the usual films of air inside and outside are from memory.';

/** The layers of a run's wall, its air and the air about it, or the reading that asks for what is missing. */
export function needLayers(scene: Scene, placed: PlacedRun): { known: DuctLayers & { dewPointC: number } } | { reading: FigureReading } {
  const exhaust = needExhaust(scene, placed);
  if ('reading' in exhaust) return exhaust;
  const dew = dewPoint({ vapourPa: exhaust.known.vapourPa });
  if (!dew.ok) return { reading: refuse(subjectsOf(placed), dew.reason) };
  const around = needAir(scene, 'ductAirC', subjectsOf(placed));
  if ('reading' in around) return around;
  const size = measureSize(placed);
  if (!size.ok) return { reading: refuse(subjectsOf(placed), size.reason) };
  return {
    known: {
      diameterM: size.value.diameterM,
      insideC: exhaust.known.temperatureC,
      outsideC: around.known,
      conductivityWmK: INSULATION?.conductivityWmK ?? Number.NaN,
      insideR: FILM_RESISTANCES['inside-duct'],
      outsideR: FILM_RESISTANCES['still-air'],
      dewPointC: dew.value,
    },
  };
}

export const askInsulation = ({ plan }: Scene, placed: PlacedRun): FigureReading =>
  askFor(subjectsOf(placed), 'insulation about the run', pathOf(plan, 'runs', placed.run.id, 'duct', 'insulation'));
