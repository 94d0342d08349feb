import { askFor, compute, createMessages, type FigureReading, type FormulaResult, type NoParams } from '../../../../rules';
import { type PlacedThing, thingPath } from '../../../../scene';
import { sinkVolume, sinkVolumeRecord } from '../../formulas/sinkVolume';

type Basins = NonNullable<PlacedThing['thing']['basins']>;

const SIZES = ['count', 'length', 'width', 'depth'] as const;

type Size = (typeof SIZES)[number];

/** What the inputs are called. */
export interface SinkBowlsMessages {
  'sink-bowls/ask-bowls': NoParams;
  'sink-bowls/ask-count': NoParams;
  'sink-bowls/ask-length': NoParams;
  'sink-bowls/ask-width': NoParams;
  'sink-bowls/ask-depth': NoParams;
}

const message = createMessages<SinkBowlsMessages>();

/** Bowls whose number and size are all known. */
export type KnownBowls = Record<Size, number>;

/** The bowls of a sink, or which of their sizes is not known; `null` of all where nothing is. */
export function bowlsOf({ basins }: PlacedThing['thing']): { bowls: KnownBowls } | { missing: Size | null } {
  if (basins === null) return { missing: null };
  const missing = SIZES.find((size) => basins[size] === null);
  return missing === undefined ? { bowls: basins as Basins & KnownBowls } : { missing };
}

/** Asks for what is not known of the bowls. */
export function askBowls(placed: PlacedThing, missing: Size | null): FigureReading {
  const path = thingPath(placed, 'basins', ...(missing === null ? [] : [missing]));
  return askFor([placed.thing.id], message(`sink-bowls/ask-${missing ?? 'bowls'}`), path);
}

const inputsOf = ({ length, width, depth }: KnownBowls) => ({ lengthM: length / 1000, widthM: width / 1000, depthM: depth / 1000 });

/** Volume of one bowl, in m³. */
export const bowlVolume = (bowls: KnownBowls): FormulaResult => sinkVolume(inputsOf(bowls));

/** The same, and how it was computed. */
export const computeBowl = (bowls: KnownBowls) => compute(sinkVolumeRecord, sinkVolume, inputsOf(bowls));
