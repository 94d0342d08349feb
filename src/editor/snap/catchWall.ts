import { type Catch, gapBetween, type Span } from './catch';

/** A wall as an axis meets it. */
export interface WallLine {
  readonly at: number;
  /** On which side of the line the room lies. */
  readonly inward: 1 | -1;
  readonly side: { readonly min: number; readonly max: number };
}

/** What stands no farther than this past a wall is brought back with the others, mm. */
const PAST = 400;

/** How a box stands before a wall: how far off, and how far it should. */
interface Standing {
  readonly box: Span;
  readonly gap: number;
  readonly keepOff: number;
}

/**
 * Catches moving boxes at a wall: flush, or at the distance that service needs. One is enough to be caught; the one that
 * needs most room decides, so that no other is pushed into the wall.
 */
export function catchWall(boxes: readonly Span[], wall: WallLine, reach: number): Catch[] {
  const facing = boxes.filter((box) => gapBetween(box.side, wall.side) <= -1).map((box) => standingOf(box, wall));
  if (!facing.some(({ gap, keepOff }) => gap >= -reach && gap <= keepOff + reach)) return [];
  const near = facing.filter(({ gap }) => gap >= -PAST);
  const held = near.reduce((most, each) => (roomFor(each) > roomFor(most) ? each : most));
  return [catchOf(held, wall)];
}

const standingOf = (box: Span, wall: WallLine): Standing =>
  wall.inward > 0 ? { box, gap: box.min - wall.at, keepOff: box.keepOff.min } : { box, gap: wall.at - box.max, keepOff: box.keepOff.max };

const roomFor = ({ gap, keepOff }: Standing) => keepOff - gap;

function catchOf(standing: Standing, wall: WallLine): Catch {
  const { box, gap, keepOff } = standing;
  const room = roomFor(standing);
  return {
    by: room * wall.inward,
    // Within what service needs nothing else catches sooner.
    cost: keepOff > 0 && gap < keepOff ? 0 : Math.abs(room),
    kind: keepOff > 0 ? 'clearance' : 'flush',
    at: wall.at + keepOff * wall.inward,
    from: box.side.min,
    to: box.side.max,
  };
}
