import type { Point } from '../../geometry';
import type { Formatter } from '../../units';

/** What every part of an elevation needs: where heights come to lie and how texts are set. */
export interface ElevationFrame {
  f: Formatter;
  /** Drawing mm per paper mm. */
  unit: number;
  /** How many times steeper decks are drawn. */
  exaggeration: number;
  /** The height that the exaggeration leaves in place: the machine's track. */
  datum: number;
  /** Where a true height is drawn: texts and dimension lines are placed by it. */
  shorten: (point: Point) => Point;
  /** Rack, and the place that it takes on a landing. */
  rackSize: number;
  rackPitch: number;
}

/** A place of the elevation at its true height: y down the paper, the floor at 0. */
export const at = (x: number, z: number): Point => ({ x, y: -z });

/** A place on a deck: its height above or below the track is drawn exaggerated. */
export const onDeck = ({ datum, exaggeration }: ElevationFrame, x: number, z: number): Point => ({
  x,
  y: -(datum + (z - datum) * exaggeration),
});
