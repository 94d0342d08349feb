import { type Fitting, UNKNOWN_BOWL, UNKNOWN_TROUGH } from '../../plan';

/** A fitting without its name and its place. */
export type FittingShape = Fitting extends infer F ? (F extends Fitting ? Omit<F, 'id' | 'at'> : never) : never;

/** Longest overshelf that is hung at first, mm. */
const OVERSHELF = 1219;

/** A fitting of its usual size, mm, for a table of this length; a landing of one rack. */
export function newFitting(kind: Fitting['kind'], tableLength: number): FittingShape {
  switch (kind) {
    case 'drop-off':
      return { kind, length: 660 };
    case 'scrap':
      return { kind, length: 200, width: 460, ...UNKNOWN_TROUGH };
    case 'sink':
      return { kind, length: 510, width: 510, bowlDepth: 200, spray: false, ...UNKNOWN_BOWL };
    case 'landing':
      return { kind, length: 508 };
    case 'overshelf':
      return { kind, length: Math.min(tableLength, OVERSHELF), depth: 305, height: 1524 };
  }
}
