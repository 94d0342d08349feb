import type { Side } from '../../catalog';
import type { Point } from '../../geometry';

/** Where the tables go. A corner is named by the two sides that it uses. */
export const LINE_CONFIGURATIONS = ['straight', 'left-front', 'right-front'] as const;
export type LineConfiguration = (typeof LINE_CONFIGURATIONS)[number];

export type LineHand = 'left-to-right' | 'right-to-left';

/** A side of a line: its direction out of the machine and the side of the table where people stand. */
export interface LineSide {
  side: Exclude<Side, 'back'>;
  heading: Point;
  operatorSide: 'left' | 'right';
}

/**
 * The soiled and the clean side. The operator stands inside the turn, or before the front of a straight line, and faces
 * the machine: the hand is left-to-right when soiled ware comes from the operator's left.
 */
export function lineSides(configuration: LineConfiguration, hand: LineHand): { soiled: LineSide; clean: LineSide } {
  const [fromLeft, fromRight] = SIDES_OF[configuration];
  return hand === 'left-to-right' ? { soiled: fromLeft, clean: fromRight } : { soiled: fromRight, clean: fromLeft };
}

const LEFT: LineSide = { side: 'left', heading: { x: -1, y: 0 }, operatorSide: 'left' };
const RIGHT: LineSide = { side: 'right', heading: { x: 1, y: 0 }, operatorSide: 'right' };

/** The two sides of each configuration, first the one at the operator's left. The operator's edge looks into the turn. */
const SIDES_OF: Record<LineConfiguration, [LineSide, LineSide]> = {
  straight: [LEFT, RIGHT],
  'left-front': [LEFT, { side: 'front', heading: { x: 0, y: 1 }, operatorSide: 'right' }],
  'right-front': [{ side: 'front', heading: { x: 0, y: 1 }, operatorSide: 'left' }, RIGHT],
};
