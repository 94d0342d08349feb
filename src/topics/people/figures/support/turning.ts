import {
  angleOf,
  type Body,
  boundsOf,
  centredRectangle,
  directionTo,
  distance,
  findShapePlace,
  findStandingPlace,
  growBounds,
  isNearBounds,
  type Point,
  type Polygon,
  signedDistance,
  squareToBounds,
} from '../../../../geometry';
import { findWidestWay, floorBodies, type Line, type Scene } from '../../../../scene';
import { CLEAR_FLOOR, TURNING_CIRCLE, TURNING_T, wayWidths } from '../../../room';

/** Where a wheelchair turns near the operator's place, and how far from it the middle of that is, mm. */
export interface Turning {
  kind: 'circle' | 't-shape';
  distance: number;
}

/** 5 ft: about two steps. */
const WITHIN = 1524;
const DIAMETER = (TURNING_CIRCLE.min ?? 0) * 1000;

/** The nearest free circle of 60 in; only where there is none the nearest free T of three arms. null where neither is free in reach. */
export function findTurning(scene: Scene, line: Line): Turning | null {
  const near = line.stand?.centre;
  if (near === undefined) return null;
  const found = findStandingPlace({
    // Wider than is looked, so that its edges bound nothing.
    region: [centredRectangle(near, 0, 3 * WITHIN, 3 * WITHIN)],
    ...floorAbout(scene, near, WITHIN + DIAMETER / 2),
    width: DIAMETER,
    within: WITHIN,
  });
  if (found !== null) return { kind: 'circle', distance: found.distance };
  const shaped = findShape(scene, line, near, T_SHAPE, QUARTERS);
  return shaped === null ? null : { kind: 't-shape', distance: shaped.distance };
}

/**
 * Whether a free floor of 30 × 48 in has its middle in reach of the operator's place. Where the operator steps back there mostly is room
 * for it however it is turned; only where there is not it is looked for.
 */
export function hasClearFloor(scene: Scene, line: Line): boolean {
  const near = line.stand?.centre;
  if (near === undefined) return false;
  const aside = findWidestWay(scene, line, wayWidths(scene.plan.settings).enough)?.to ?? near;
  return (
    (distance(near, aside) <= WITHIN && isRoomy(scene, aside, Math.hypot(CLEAR_FLOOR.widthM, CLEAR_FLOOR.lengthM) * 500)) ||
    findShape(scene, line, near, [CLEAR_RECTANGLE], QUARTERS.slice(0, 2)) !== null
  );
}

const isRoomy = (scene: Scene, p: Point, radius: number) =>
  signedDistance(scene.room.outline, p) <= -radius &&
  floorBodies(scene).every(({ polygon, bounds }) => squareToBounds(bounds, p) >= radius * radius || signedDistance(polygon, p) >= radius);

const rectangleOf = (x: number, yFrom: number, yTo: number): Polygon => [
  { x: -x, y: yFrom },
  { x, y: yFrom },
  { x, y: yTo },
  { x: -x, y: yTo },
];
const [HALF, ARM] = [TURNING_T.squareM * 500, TURNING_T.armM * 1000];
/** One arm across the top of the square, the other down its middle. */
const T_SHAPE: readonly Polygon[] = [rectangleOf(HALF, -HALF, ARM - HALF), rectangleOf(ARM / 2, -HALF, HALF)];
const CLEAR_RECTANGLE = rectangleOf(CLEAR_FLOOR.widthM * 500, -CLEAR_FLOOR.lengthM * 500, CLEAR_FLOOR.lengthM * 500);

const QUARTERS = [0, 90, 180, 270];
/** Directions nearer to each other than this are one. */
const SAME_DEG = 0.5;

const findShape = (scene: Scene, line: Line, near: Point, pieces: readonly Polygon[], turns: readonly number[]) =>
  findShapePlace({
    pieces,
    headingsDeg: directionsIn(scene, line).flatMap((direction) => turns.map((turn) => direction + turn)),
    ...floorAbout(scene, near, WITHIN + HALF * Math.SQRT2),
    within: WITHIN,
  });

/** The directions of the machine, the walls and the tables, from 0 up to 90°: what is narrow is narrow along one of them. */
function directionsIn({ room, tables }: Scene, { machine }: Line): number[] {
  const all = [
    machine.frame.rotationDeg,
    ...room.walls.map(({ direction }) => angleOf(direction)),
    ...tables.flatMap(({ path }) => path.slice(1).map((to, i) => angleOf(directionTo(path[i] ?? to, to)))),
  ].map((deg) => ((deg % 90) + 90) % 90);
  const isSame = (a: number, b: number) => Math.min(Math.abs(a - b), 90 - Math.abs(a - b)) < SAME_DEG;
  return all.filter((deg, i) => all.findIndex((other) => isSame(other, deg)) === i);
}

function floorAbout(scene: Scene, near: Point, reach: number): { room: Polygon; obstacles: Body[]; near: Point } {
  const around = growBounds(boundsOf([near]), reach);
  const obstacles = floorBodies(scene).filter(({ bounds }) => isNearBounds(around, bounds));
  return { room: scene.room.outline, obstacles, near };
}
