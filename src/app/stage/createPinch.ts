import type { PinchInput } from '../../editor';
import { distance, midpoint, type Point } from '../../geometry';

/** What two fingers did between two moments (px): they slid by their middle, and enlarged by their distance. More fingers count for nothing. */
export function createPinch(before: readonly Point[], after: readonly Point[]): PinchInput {
  const [was, is] = [spread(before), spread(after)];
  return {
    type: 'pinch',
    screen: is.middle,
    factor: was.length > 0 ? is.length / was.length : 1,
    dx: is.middle.x - was.middle.x,
    dy: is.middle.y - was.middle.y,
  };
}

const ORIGIN: Point = { x: 0, y: 0 };

function spread([a = ORIGIN, b = a]: readonly Point[]) {
  return { middle: midpoint(a, b), length: distance(a, b) };
}
