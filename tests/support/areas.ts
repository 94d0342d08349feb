import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import { centredRectangle, type Point, type Polygon } from '../../src/geometry';
import { createRandom } from './seeded';

/** Areas as jsts, a port of the JTS Topology Suite, sees them: the oracle of our own geometry. */

export type Area = Geometry;

const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);

export const areaOf = (polygon: Polygon): Area => factory.createPolygon([...polygon, ...polygon.slice(0, 1)].map(coordinate));
export const placeOf = (p: Point): Area => factory.createPoint(coordinate(p));
export const lineOf = (path: readonly Point[]): Area => factory.createLineString(path.map(coordinate));

export const common = (a: Area, b: Area): Area => OverlayOp.intersection(a, b);
export const less = (a: Area, b: Area): Area => OverlayOp.difference(a, b);
export const joined = (areas: readonly Area[]): Area => areas.reduce((sum, area) => OverlayOp.union(sum, area));
export const between = (a: Area, b: Area): number => DistanceOp.distance(a, b);

/** Chords of a quarter circle: they lie within r · (1 − cos(90° / 48)), 0.54 mm for 1 m, inside the arc. */
const CHORDS = 24;
const ROUND = new BufferParameters(CHORDS, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 5);
const SHARP = new BufferParameters(CHORDS, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 1000);

/** Everything within a distance of an area; less everything within it of its outline, when negative. */
export const grown = (area: Area, by: number): Area => BufferOp.bufferOp(area, by, ROUND);
/** The same with sharp corners and ends cut square. */
export const grownSharp = (area: Area, by: number): Area => BufferOp.bufferOp(area, by, SHARP);

/** The piece of an area that a place lies in; null where it lies in none. */
export function pieceAt(area: Area, p: Point): Area | null {
  for (let n = 0; n < area.getNumGeometries(); n++) {
    const piece = area.getGeometryN(n);
    if (!piece.isEmpty() && between(piece, placeOf(p)) === 0) return piece;
  }
  return null;
}

/** Whether a round body of a width can be carried from one place to the other over a floor. */
export function isWayFor(floor: Area, width: number, from: Point, to: Point): boolean {
  const piece = pieceAt(grown(floor, -width / 2), from);
  return piece !== null && between(piece, placeOf(to)) === 0;
}

/** The floor of a room that no body takes. */
export const freeFloor = (room: Polygon, bodies: readonly Polygon[]): Area =>
  bodies.reduce((rest, body) => less(rest, areaOf(body)), areaOf(room));

/** A simple room of 5 to 12 corners, most of them concave, about (3000, 2500): as one sees its corners in turn from there. */
export function createStarRoom(seed: number): Polygon {
  const random = createRandom(seed * 9176 + 3);
  const corners = 5 + Math.floor(random() * 8);
  return Array.from({ length: corners }, (_, i) => {
    const [angle, reach] = [((i + 0.8 * random()) * 2 * Math.PI) / corners, 900 + random() * 1900];
    return { x: 3000 + reach * Math.cos(angle), y: 2500 + reach * Math.sin(angle) };
  });
}

/** Rectangles anywhere in 6000 × 5000, half of them square to the walls. */
export function createBodies(seed: number, count: number): Polygon[] {
  const random = createRandom(seed * 7351 + 17);
  return Array.from({ length: count }, () => {
    const [x, y, deg] = [random() * 6000, random() * 5000, random() < 0.5 ? 0 : random() * 360];
    return centredRectangle({ x, y }, deg, 150 + random() * 1100, 100 + random() * 600);
  });
}
