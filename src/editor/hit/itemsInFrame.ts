import type { Point } from '../../geometry';
import type { Scene } from '../../scene';
import { shapesOf } from './shapesOf';

/** Everything that lies wholly inside a frame drawn on the paper. Walls, their openings and fittings of tables are not taken by a frame. */
export function itemsInFrame(scene: Scene, from: Point, to: Point): string[] {
  const [x0, x1] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [y0, y1] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  const isIn = ({ x, y }: Point) => x >= x0 && x <= x1 && y >= y0 && y <= y1;
  return [...shapesOf(scene).values()].filter(({ corners }) => corners.length > 0 && corners.every(isIn)).map(({ id }) => id);
}
