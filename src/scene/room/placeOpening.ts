import { along, lerp, type Point, type Polygon, type Segment } from '../../geometry';
import type { Opening } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedOpening, Wall } from '../types';

/** An opening in its wall, with the floor that its leaves sweep. */
export const placeOpening = memoizeByIdentity((opening: Opening, wall: Wall): PlacedOpening => {
  const segment = {
    a: along(wall.a, wall.direction, opening.from),
    b: along(wall.a, wall.direction, opening.from + opening.width),
  };
  return {
    opening,
    wall,
    segment,
    centre: lerp(segment.a, segment.b, 0.5),
    sweep: opening.swing === 'in' ? sweepOf(opening, segment, wall.inward) : [],
    isWay: OPENINGS[opening.kind].isWay,
  };
});

/** What a kind of opening has: leaves that swing, and whether people walk through. */
const OPENINGS: Record<Opening['kind'], { leaves: 0 | 1 | 2; isWay: boolean }> = {
  door: { leaves: 1, isWay: true },
  'double-door': { leaves: 2, isWay: true },
  'cased-opening': { leaves: 0, isWay: true },
  'pass-window': { leaves: 0, isWay: false },
  window: { leaves: 0, isWay: false },
};

function sweepOf(opening: Opening, { a, b }: Segment, inward: Point): Polygon[] {
  const { leaves } = OPENINGS[opening.kind];
  const middle = lerp(a, b, 0.5);
  if (leaves === 2) return [quarterDisc(a, middle, inward), quarterDisc(b, middle, inward)];
  if (leaves === 0) return [];
  return [opening.hinge === 'start' ? quarterDisc(a, b, inward) : quarterDisc(b, a, inward)];
}

/** Chords of a quarter turn; at 12 they lie within 0.3 % of a leaf's width of the arc, inside it. */
const CHORDS = 12;

/** The fan of a leaf that shuts from its hinge to `latch` and opens a quarter turn toward `inward`. */
function quarterDisc(hinge: Point, latch: Point, inward: Point): Polygon {
  const shut = { x: latch.x - hinge.x, y: latch.y - hinge.y };
  const width = Math.hypot(shut.x, shut.y);
  const arc = Array.from({ length: CHORDS + 1 }, (_, i) => {
    const angle = ((Math.PI / 2) * i) / CHORDS;
    const [across, into] = [Math.cos(angle), Math.sin(angle) * width];
    return { x: hinge.x + shut.x * across + inward.x * into, y: hinge.y + shut.y * across + inward.y * into };
  });
  return [hinge, ...arc];
}
