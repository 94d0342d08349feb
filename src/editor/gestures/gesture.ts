import type { Point } from '../../geometry';
import type { Plan } from '../../plan';

/**
 * A drag of something that exists. Keeps the plan as it was when the drag began; every move works
 * out the whole change from that plan anew, so a gesture can be dropped without a trace.
 */
export type Gesture = {
  readonly start: Plan;
  /** Where the pointer went down, and where it is, mm. */
  readonly from: Point;
  readonly to: Point;
} & (
  | { readonly kind: 'move'; readonly ids: readonly string[]; readonly held: Hold | null }
  | { readonly kind: 'handle'; readonly id: string; readonly handle: string; readonly held: Hold | null }
);

/** The door that a table's end is held by during the drag, so that letting go takes a longer pull than catching. */
export interface Hold {
  readonly machine: string;
  readonly side: 'left' | 'right' | 'front' | 'back';
  /** Held by the far end: the table is turned round. */
  readonly reversed: boolean;
}
