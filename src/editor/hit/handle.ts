import type { Point } from '../../geometry';
import type { Cursor } from '../types';

/** A grip of the chosen thing. */
export interface Handle {
  /** `rotate`, `left`, `right-front`, `leg-0`, `start`, `point-2`, `fan`, `corner-wall-3`, `from`, `to`. */
  readonly id: string;
  /** Id of what it changes. */
  readonly subject: string;
  readonly point: Point;
  readonly shape: 'square' | 'round';
  readonly cursor: Cursor;
}
