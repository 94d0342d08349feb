/** More of the library: what joins areas, takes one from another, and moves outlines in and out. */
declare module 'jsts/org/locationtech/jts/geom/GeometryFactory.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';

  export interface Geometry {
    getLength(): number;
    getNumGeometries(): number;
    getGeometryN(n: number): Geometry;
    getBoundary(): Geometry;
    getCoordinates(): Coordinate[];
    isEmpty(): boolean;
  }
}
declare module 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const overlay: {
    intersection(a: Geometry, b: Geometry): Geometry;
    difference(a: Geometry, b: Geometry): Geometry;
    union(a: Geometry, b: Geometry): Geometry;
  };
  export default overlay;
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js' {
  export default class BufferParameters {
    constructor(quadrantSegments: number, endCap: number, join: number, mitreLimit: number);
    static CAP_ROUND: number;
    static CAP_FLAT: number;
    static JOIN_ROUND: number;
    static JOIN_MITRE: number;
  }
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  import type BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';

  const operation: { bufferOp(geometry: Geometry, by: number, how: BufferParameters): Geometry };
  export default operation;
}
