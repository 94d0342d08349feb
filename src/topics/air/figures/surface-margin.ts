import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, readFigure } from '../../../rules';
import type { Scene } from '../../../scene';
import { FILM_RESISTANCES } from '../formulas/support/filmResistances';
import { surfaceMargin, surfaceMarginRecord } from '../formulas/surfaceMargin';
import { rule as roomHumidity } from './room-humidity-steady';
import { needAir } from './support/roomAir';
import { needPressure } from './support/sitePressure';

export const rule: FigureRule = {
  id: 'surface-margin',
  order: 670,
  title: 'Wall and ceiling above the dew point of the room',
  group: 'air',
  unit: 'K',
  derive: (scene) =>
    scene.machines.length === 0 ? [] : SURFACES.map((surface) => ({ ...deriveSurface(scene, surface), part: surface.part })),
};

export interface SurfaceMarginMessages {
  'surface-margin/coldest-outside': NoParams;
}

const say = createMessages<SurfaceMarginMessages>();

const SURFACES = [
  { part: 'wall', field: 'wallConductance', filmR: FILM_RESISTANCES['still-air'] },
  { part: 'ceiling', field: 'ceilingConductance', filmR: FILM_RESISTANCES['still-air-upward'] },
] as const;
type Surface = (typeof SURFACES)[number];

/** The coldest air outside stands behind both, with wind on it; the room is as humid as its machines make it. */
function deriveSurface(scene: Scene, { field, filmR }: Surface): FigureReading {
  const conductance = needAir(scene, field);
  if ('reading' in conductance) return conductance.reading;
  const outdoor = needAir(scene, 'outdoorC');
  if ('reading' in outdoor) return outdoor.reading;
  const humidity = readFigure(roomHumidity, scene)[0];
  if (humidity?.value == null) return humidity ?? { subjects: [], value: null, how: null };
  const room = needAir(scene, 'roomC');
  if ('reading' in room) return room.reading;
  const pressure = needPressure(scene, []);
  if ('reading' in pressure) return pressure.reading;
  const behindFilmR = FILM_RESISTANCES['wind-15-mph'];
  const inputs = {
    roomC: room.known,
    relativeHumidity: humidity.value,
    pressurePa: pressure.known,
    behindC: outdoor.known,
    roomFilmR: filmR,
    // What the whole conductance leaves for the wall itself, beside its films.
    wallR: 1 / conductance.known - filmR - behindFilmR,
    behindFilmR,
  };
  return { subjects: [], ...compute(surfaceMarginRecord, surfaceMargin, inputs), notes: [say('surface-margin/coldest-outside')] };
}
