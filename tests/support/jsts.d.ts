/** The few parts of the library that the tests call; it brings no declarations for its single files. */
declare module 'jsts/org/locationtech/jts/geom/Coordinate.js' {
  export default class Coordinate {
    constructor(x: number, y: number);
    x: number;
    y: number;
  }
}
declare module 'jsts/org/locationtech/jts/geom/GeometryFactory.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  export interface Geometry {
    getArea(): number;
  }
  export default class GeometryFactory {
    createPolygon(shell: Coordinate[]): Geometry;
    createLineString(points: Coordinate[]): Geometry;
    createPoint(at: Coordinate): Geometry;
  }
}
declare module 'jsts/org/locationtech/jts/algorithm/Centroid.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const centroid: { getCentroid(geometry: Geometry): Coordinate };
  export default centroid;
}
declare module 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const overlay: { intersection(a: Geometry, b: Geometry): Geometry };
  export default overlay;
}
declare module 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const operation: { distance(a: Geometry, b: Geometry): number };
  export default operation;
}
declare module 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  export default class IsValidOp {
    constructor(geometry: Geometry);
    isValid(): boolean;
  }
}
