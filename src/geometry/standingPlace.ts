import { boundsOf } from './bounds';
import { distance, type Point, type Polygon } from './points';
import { containsPoint, distanceToOutline } from './polygon';

export interface StandingSearch {
  /** Where the centre of the person may be: convex pieces. */
  readonly region: readonly Polygon[];
  readonly room: Polygon;
  readonly obstacles: readonly Polygon[];
  /** The place to be near. */
  readonly near: Point;
  /** Diameter of the person's circle, mm. */
  readonly width: number;
  /** How far from `near` to look, mm. */
  readonly within: number;
}

/** Grids of the search, coarse to fine, mm. */
const COARSE = 60;
const FINEST = 1;

/**
 * The free place nearest to `near` where a person's circle fits: its centre in the region, the circle
 * inside the room and clear of obstacles. A grid aligned with `near` is searched, then refined around
 * the best place to 1 mm. null when there is none within reach. Deterministic.
 */
export function findStandingPlace(search: StandingSearch): { centre: Point; distance: number } | null {
  const { near, within } = search;
  const isFree = createFreeTest(search);
  let best = searchGrid(near, within, COARSE, near, isFree);
  for (let step = COARSE / 2; best && step >= FINEST; step /= 2) best = searchGrid(best, step * 2, step, near, isFree) ?? best;
  return best && { centre: best, distance: distance(best, near) };
}

/** The free grid point nearest to `near`, among those within `reach` of `centre` on each axis. */
function searchGrid(centre: Point, reach: number, step: number, near: Point, isFree: (p: Point) => boolean): Point | null {
  const n = Math.ceil(reach / step);
  let best: Point | null = null;
  let least = Infinity;
  for (let i = -n; i <= n; i++) {
    for (let j = -n; j <= n; j++) {
      const p = { x: centre.x + i * step, y: centre.y + j * step };
      const away = distance(p, near);
      if (away >= least || !isFree(p)) continue;
      best = p;
      least = away;
    }
  }
  return best;
}

function createFreeTest({ region, room, obstacles, width, near, within }: StandingSearch): (p: Point) => boolean {
  const radius = width / 2 - 1e-6;
  const inReach = obstacles.filter((o) => isWithinReach(o, near, within + radius));
  return (p) =>
    distance(p, near) <= within &&
    region.some((piece) => containsPoint(piece, p)) &&
    containsPoint(room, p) &&
    distanceToOutline(room, p) >= radius &&
    inReach.every((o) => distanceToOutline(o, p) >= radius && !containsPoint(o, p));
}

function isWithinReach(polygon: Polygon, p: Point, reach: number): boolean {
  const b = boundsOf(polygon);
  return p.x >= b.minX - reach && p.x <= b.maxX + reach && p.y >= b.minY - reach && p.y <= b.maxY + reach;
}
