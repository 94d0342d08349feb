import {
  boundsOf,
  centredRectangle,
  clipHalfPlane,
  findStandingPlace,
  growBounds,
  isNearBounds,
  obstacleBody,
  type Point,
  type Polygon,
} from '../geometry';
import { memoizeByIdentity } from './memoizeByIdentity';
import type { Inside, Line, PlacedControls } from './types';

/** An operator who has no free place within this of the controls doesn't stand at the machine at all. */
export const STAND_WITHIN = 2000;

/** Most stand within an arm's length; there the search meets few bodies. Looking here first changes nothing but the time. */
const FIRST_WITHIN = 700;

/**
 * Where the operator stands: the free place inside the turn that is nearest to the controls (to the
 * corner of the turn, where the controls are not known). null when there is none within 2 m.
 * Whether it is near enough to reach from is for a check to say.
 */
export const deriveStand = memoizeByIdentity(
  (inside: Inside, controls: PlacedControls | null, room: Polygon, obstacles: readonly Polygon[], width: number): Line['stand'] => {
    const near = controls === null ? inside.corner : { x: controls.centre.x, y: controls.centre.y };
    const search = (within: number) => {
      const region = [regionOf(inside, near, within)].filter((piece) => piece.length > 2);
      return findStandingPlace({ region, room, obstacles: obstaclesNear(near, within + width / 2, obstacles), near, width, within });
    };
    const found = search(FIRST_WITHIN) ?? search(STAND_WITHIN);
    return found === null ? null : { centre: found.centre, width, reach: found.distance };
  },
);

/** The inside of the turn as far as the search goes: a square about the controls, cut by the sides' lines. */
function regionOf({ corner, normals }: Inside, near: Point, within: number): Polygon {
  return normals.reduce<Polygon>((rest, normal) => clipHalfPlane(rest, corner, normal), centredRectangle(near, 0, 2 * within, 2 * within));
}

function obstaclesNear(near: Point, reach: number, obstacles: readonly Polygon[]): Polygon[] {
  const around = growBounds(boundsOf([near]), reach);
  return obstacles.filter((polygon) => isNearBounds(around, obstacleBody(polygon).bounds));
}
