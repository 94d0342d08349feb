import { cosSin, rotate } from './angles';
import { add, type Point, type Polygon, sub } from './points';

/** A local frame: where its origin lies and how far it is turned, clockwise on the paper. */
export interface Frame {
  readonly origin: Point;
  readonly rotationDeg: number;
}

/** A local point in the plan. */
export const toWorld = (frame: Frame, p: Point): Point => add(frame.origin, rotate(p, frame.rotationDeg));

/** A point of the plan in the frame. */
export const toLocal = (frame: Frame, p: Point): Point => rotate(sub(p, frame.origin), -frame.rotationDeg);

/** A local direction in the plan. */
export const directionToWorld = (frame: Frame, d: Point): Point => rotate(d, frame.rotationDeg);

/** A direction of the plan in the frame. */
export const directionToLocal = (frame: Frame, d: Point): Point => rotate(d, -frame.rotationDeg);

/** The rectangle from (x0, y0) to (x1, y1) of a frame, in the plan; clockwise on the paper from its first corner. */
export function rectangle(frame: Frame, x0: number, y0: number, x1: number, y1: number): Polygon {
  const { origin, rotationDeg } = frame;
  const { cos, sin } = cosSin(rotationDeg);
  const corner = (x: number, y: number): Point => ({ x: origin.x + (x * cos - y * sin + 0), y: origin.y + (x * sin + y * cos + 0) });
  return [corner(x0, y0), corner(x1, y0), corner(x1, y1), corner(x0, y1)];
}

/** A rectangle about its centre. */
export function centredRectangle(centre: Point, rotationDeg: number, width: number, depth: number): Polygon {
  return rectangle({ origin: centre, rotationDeg }, -width / 2, -depth / 2, width / 2, depth / 2);
}
