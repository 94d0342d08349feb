import { containsPoint, distance, nearestOnOutline, type Polygon } from '../../../../geometry';
import { pathOf, type Run } from '../../../../plan';
import { askFor, createMessages, type FigureReading, type NoParams, notesOf, refuse } from '../../../../rules';
import type { PlacedRun, Scene } from '../../../../scene';
import { dewPoint, FILM_RESISTANCES, INSULATIONS, needAir, subjectsOf } from '../../../air';
import type { DuctLayers } from '../../formulas/ductWall';
import { sayDuctAsk } from './ductAsks';
import { measureSize, needExhaust } from './runDuct';

/** What lies about a part of a run: the air of the building, or the weather. */
export type RunPart = 'indoors' | 'outdoors';

/** The layers of one part of a run, or the reading that asks for what is missing. */
export type PartLayers = { part: RunPart } & ({ known: DuctLayers & { dewPointC: number } } | { reading: FigureReading });

/** The run in its parts, or the reading that asks for what all of them need. */
export function needLayers(scene: Scene, placed: PlacedRun): { parts: PartLayers[] } | { reading: FigureReading } {
  const exhaust = needExhaust(scene, placed);
  if ('reading' in exhaust) return exhaust;
  const dew = dewPoint({ vapourPa: exhaust.known.vapourPa });
  if (!dew.ok) return { reading: refuse(subjectsOf(placed), dew.refusal) };
  const size = measureSize(placed);
  if (!size.ok) return { reading: refuse(subjectsOf(placed), size.refusal) };
  const common = {
    diameterM: size.value.diameterM,
    insideC: exhaust.known.temperatureC,
    conductivityWmK: conductivityOf(placed),
    insideR: FILM_RESISTANCES['inside-duct'],
    dewPointC: dew.value,
  };
  const parts: RunPart[] = hasPartOutdoors(scene, placed) ? ['indoors', 'outdoors'] : ['indoors'];
  return {
    parts: parts.map((part) => {
      const { field, film } = ABOUT[part];
      const around = needAir(scene, field, subjectsOf(placed));
      if ('reading' in around) return { part, ...around };
      return { part, known: { outsideC: around.known, outsideR: FILM_RESISTANCES[film], ...common } };
    }),
  };
}

/** What is assumed of the wall of a run. */
export interface DuctWallsMessages {
  'duct-walls/coldest-outside': NoParams;
  'duct-walls/kind-unknown': { counted: InsulationKind };
  'duct-walls/films': NoParams;
  'duct-walls/governs': NoParams;
}

type InsulationKind = NonNullable<Run['duct']['insulationKind']>;

const say = createMessages<DuctWallsMessages>();

const ABOUT = {
  indoors: { field: 'ductAirC', film: 'still-air' },
  outdoors: { field: 'outdoorC', film: 'wind-15-mph' },
} as const;

/** Walls are about so thick, mm: a run that ends within one is not out in the weather. */
const WALL = 120;

/** A run through the roof ends above it, unless its outlet is said to be level with it; any other is outdoors where it leaves the room. */
const hasPartOutdoors = ({ room }: Scene, placed: PlacedRun): boolean =>
  (placed.run.outlet === 'roof' && placed.run.duct.aboveRoof !== 0) || leaves(placed, room.outline);

const leaves = ({ points }: PlacedRun, outline: Polygon) =>
  points.some((point) => !containsPoint(outline, point) && distance(point, nearestOnOutline(outline, point)) > WALL);

/** What is not said counts as the insulation that keeps least. */
const LEAST_KEEPING = INSULATIONS.reduce((worst, one) => (one.conductivityWmK > worst.conductivityWmK ? one : worst));

const conductivityOf = ({ run }: PlacedRun) =>
  (INSULATIONS.find(({ id }) => id === run.duct.insulationKind) ?? LEAST_KEEPING).conductivityWmK;

/** What was assumed of a part of a run's wall. `isInsulated`: there is insulation whose kind matters. */
export const wallNotes = ({ run }: PlacedRun, part: RunPart, isInsulated: boolean): Pick<FigureReading, 'notes'> =>
  notesOf(
    part === 'outdoors' ? say('duct-walls/coldest-outside') : null,
    isInsulated && run.duct.insulationKind === null ? say('duct-walls/kind-unknown', { counted: LEAST_KEEPING.id }) : null,
    say('duct-walls/films'),
  );

export const askInsulation = ({ plan }: Scene, placed: PlacedRun): FigureReading =>
  askFor(subjectsOf(placed), sayDuctAsk('duct/ask-insulation'), pathOf(plan, 'runs', placed.run.id, 'duct', 'insulation'));

/** The readings of a run's parts with the one that governs marked: the least or the greatest; none while one is not known. */
export function markGoverning(readings: FigureReading[], order: 'least' | 'greatest'): FigureReading[] {
  const values = readings.map(({ value }) => value);
  if (readings.length < 2 || values.includes(null)) return readings;
  const extreme = (order === 'least' ? Math.min : Math.max)(...values.filter((value) => value !== null));
  const governing = values.indexOf(extreme);
  return readings.map((reading, i) =>
    i === governing
      ? {
          ...reading,
          governs: true,
          notes: [...(reading.notes ?? []), say('duct-walls/governs')],
        }
      : reading,
  );
}
