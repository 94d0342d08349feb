import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { FILM_RESISTANCES, rValue } from './support/filmResistances';
import { measureMoistAirOfRelative } from './support/moistAir';
import { STANDARD_PRESSURE } from './support/standardAir';
import { innerSurface } from './wallTemperature';

export interface SurfaceMarginInputs {
  roomC: number;
  relativeHumidity: number;
  pressurePa: number;
  /** Air on the other side of the wall or above the ceiling. */
  behindC: number;
  roomFilmR: number;
  wallR: number;
  behindFilmR: number;
}

/** How far in K the surface of a wall or a ceiling lies above the dew point of the room. Below 0 it sweats. */
export function surfaceMargin(inputs: SurfaceMarginInputs): FormulaResult {
  const refusal = findOutOfRange(surfaceMarginRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { roomC, relativeHumidity, pressurePa, behindC, roomFilmR, wallR, behindFilmR } = inputs;
  const surface = innerSurface({ insideC: roomC, outsideC: behindC, insideR: roomFilmR, wallR, outsideR: behindFilmR });
  if (!surface.ok) return surface;
  const air = measureMoistAirOfRelative({ temperatureC: roomC, relativeHumidity, pressurePa });
  return air.ok ? { ok: true, value: surface.value - air.value.dewPointC } : air;
}

const article = 'Where Does the Dew Drop: between 32 and 70 °F behind R-7 of R-18 47 °F; the dew point of 70 °F and 50 % is about 50 °F';
const film = (text: string) => ({ text, unit: 'm2·K/W', min: 0.001, max: 5 }) as const;

export const surfaceMarginRecord: FormulaRecord<SurfaceMarginInputs> = {
  id: 'surface-margin',
  title: 'Margin of a surface above the dew point',
  formula: 'Δ = t_r − (t_r − t_b) R_r / (R_r + R + R_b) − t_d',
  inputs: {
    roomC: { text: 'Air of the room', unit: 'C', min: 0, max: 60 },
    relativeHumidity: { text: 'Relative humidity of the room', unit: 'share', min: 0.01, max: 1 },
    pressurePa: { text: 'Pressure of the air', unit: 'Pa', min: 60_000, max: 120_000 },
    behindC: { text: 'Air behind the surface', unit: 'C', min: -40, max: 60 },
    roomFilmR: film('Film on the room side'),
    wallR: { text: 'Wall or ceiling', unit: 'm2·K/W', min: 0, max: 20 },
    behindFilmR: film('Film behind'),
  },
  result: { text: 'Surface above the dew point; below 0 it sweats', unit: 'K', min: -100, max: 150 },
  source: [{ text: `Resistances in a row; ${article}`, documents: ['dew-drop-article', 'thermal-resistances'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: article,
      inputs: {
        roomC: toSI(70, 'F'),
        relativeHumidity: 0.5,
        pressurePa: STANDARD_PRESSURE,
        behindC: toSI(32, 'F'),
        roomFilmR: rValue(11),
        wallR: rValue(6),
        behindFilmR: rValue(1),
      },
      result: toSI(-3, 'deltaF'),
      tolerance: toSI(1, 'deltaF'),
    },
    {
      kind: 'regression',
      from: 'room of 82 °F and 60 % against a single sheet with 0 °F behind it',
      inputs: {
        roomC: toSI(82, 'F'),
        relativeHumidity: 0.6,
        pressurePa: STANDARD_PRESSURE,
        behindC: toSI(0, 'F'),
        roomFilmR: FILM_RESISTANCES['still-air'],
        wallR: 0,
        behindFilmR: FILM_RESISTANCES['wind-15-mph'],
      },
      result: toSI(-50.35, 'deltaF'),
      tolerance: toSI(0.02, 'deltaF'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 650, formulas: [formula(surfaceMarginRecord, surfaceMargin)] }];
