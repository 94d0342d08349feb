import {
  type Body,
  boundsOf,
  centredRectangle,
  clipHalfPlane,
  findStandingPlace,
  growBounds,
  isNearBounds,
  type Point,
  type Polygon,
} from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { Inside, Line, PlacedControls } from '../types';

/** An operator who has no free place within this of the controls doesn't stand at the machine at all. */
export const STAND_WITHIN = 2000;

/**
 * Where the operator stands: the free place inside the turn that is nearest to the controls (to the
 * corner of the turn, where the controls are not known). null when there is none within 2 m.
 * Whether it is near enough to reach from is for a check to say.
 */
export const deriveStand = memoizeByIdentity(
  (inside: Inside, controls: PlacedControls | null, room: Polygon, obstacles: readonly Body[], width: number): Line['stand'] => {
    const near = controls === null ? inside.corner : { x: controls.centre.x, y: controls.centre.y };
    const region = [regionOf(inside, near, STAND_WITHIN)].filter((piece) => piece.length > 2);
    const about = obstaclesNear(near, STAND_WITHIN + width / 2, obstacles);
    const found = findStandingPlace({ region, room, obstacles: about, near, width, within: STAND_WITHIN });
    return found === null ? null : { centre: found.centre, width, reach: found.distance };
  },
);

/** The inside of the turn as far as the search goes: a square about the controls, cut by the sides' lines. */
function regionOf({ corner, normals }: Inside, near: Point, within: number): Polygon {
  return normals.reduce<Polygon>((rest, normal) => clipHalfPlane(rest, corner, normal), centredRectangle(near, 0, 2 * within, 2 * within));
}

function obstaclesNear(near: Point, reach: number, obstacles: readonly Body[]): Body[] {
  const around = growBounds(boundsOf([near]), reach);
  return obstacles.filter(({ bounds }) => isNearBounds(around, bounds));
}
