import { type Body, createBody, type Polygon } from '../../src/geometry';

/** A body for each polygon, as they stand in a room that nobody has looked at yet. */
export const bodiesOf = (polygons: readonly Polygon[]): Body[] => polygons.map((polygon) => createBody(polygon));
