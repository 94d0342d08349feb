import {
  area,
  containsPoint,
  distance,
  distanceToOutline,
  distanceToSegment,
  type Point,
  type Polygon,
  type Segment,
} from '../../geometry';
import type { PlacedHood, Scene } from '../../scene';
import type { SubjectKind } from '../subject/subject';

/** Something under a point. */
export interface Hit {
  readonly id: string;
  readonly kind: SubjectKind;
}

/**
 * Everything under a point of the plan, topmost first and, where several lie at the same level, the
 * smallest first. A hood hangs over what one means to press, so only its edge counts; pressing again on
 * the same place goes down the list.
 */
export function hitTest(scene: Scene, point: Point, tolerance: number): Hit[] {
  const found = [...hitRoom(scene, point, tolerance), ...hitLine(scene, point, tolerance), ...hitAir(scene, point, tolerance)];
  return found.sort((a, b) => a.level - b.level || a.size - b.size).map(({ id, kind }) => ({ id, kind }));
}

/** Levels from the top down. Points and lines go before areas, since they are hard to aim at. */
const LEVELS: Record<SubjectKind, number> = {
  stub: 0,
  run: 1,
  hood: 2,
  fitting: 3,
  'floor-drain': 4,
  opening: 4,
  column: 5,
  thing: 5,
  table: 6,
  machine: 7,
  corner: 8,
};

interface Found extends Hit {
  level: number;
  size: number;
}

const row = (id: string, kind: SubjectKind, size: number): Found => ({ id, kind, level: LEVELS[kind], size });

/** An area counts where it covers the point; a small one also a little way around it, so that a finger finds it. */
function covers(polygon: Polygon, point: Point, tolerance: number): boolean {
  return containsPoint(polygon, point) || distanceToOutline(polygon, point) <= tolerance;
}

function hitRoom({ room }: Scene, point: Point, tolerance: number): Found[] {
  return [
    ...room.stubs
      .filter(({ point: at }) => distance(at, point) <= tolerance * 1.5)
      .map(({ stub, point: at }) => row(stub.id, 'stub', distance(at, point))),
    ...room.floorDrains
      .filter(({ polygon }) => covers(polygon, point, tolerance))
      .map(({ drain, polygon }) => row(drain.id, 'floor-drain', area(polygon))),
    ...room.columns
      .filter(({ polygon }) => covers(polygon, point, 0))
      .map(({ column, polygon }) => row(column.id, 'column', area(polygon))),
    ...room.openings
      .filter(({ segment }) => distanceToSegment(point, segment) <= tolerance * 1.5)
      .map(({ opening }) => row(opening.id, 'opening', opening.width)),
    ...room.walls.filter((wall) => distanceToSegment(point, wall) <= tolerance).map((wall) => row(wall.id, 'corner', wall.length)),
  ];
}

function hitLine({ machines, tables, things }: Scene, point: Point, tolerance: number): Found[] {
  return [
    ...machines
      .filter(({ footprint }) => covers(footprint, point, 0))
      .map(({ machine, footprint }) => row(machine.id, 'machine', area(footprint))),
    ...tables
      .filter(({ deck }) => deck.some((piece) => covers(piece, point, 0)))
      .map(({ table, outline }) => row(table.id, 'table', area(outline))),
    ...tables
      .flatMap(({ fittings }) => fittings)
      .filter(({ polygon }) => covers(polygon, point, 0))
      .map(({ fitting, polygon }) => row(fitting.id, 'fitting', area(polygon))),
    ...things
      .filter(({ polygon }) => covers(polygon, point, tolerance / 2))
      .map(({ thing, polygon }) => row(thing.id, 'thing', area(polygon))),
  ];
}

function hitAir({ hoods, runs }: Scene, point: Point, tolerance: number): Found[] {
  const onPath = (points: readonly Point[], reach: number) => legs(points).some((leg) => distanceToSegment(point, leg) <= reach);
  const isOnHood = ({ covers: under, polygon }: PlacedHood) =>
    distanceToOutline(polygon, point) <= tolerance || (under.length === 0 && containsPoint(polygon, point));
  return [
    ...runs
      .filter(({ points, run }) => onPath(points, Math.max(run.diameter / 2, tolerance)))
      .map(({ run }) => row(run.id, 'run', run.diameter)),
    ...hoods.filter(isOnHood).map(({ hood, polygon }) => row(hood.id, 'hood', area(polygon))),
  ];
}

const legs = (points: readonly Point[]): Segment[] => points.slice(1).map((b, i) => ({ a: points[i] ?? b, b }));

/** Everything that lies wholly inside a frame drawn on the paper. Walls and their openings are not taken by a frame. */
export function hitBox(scene: Scene, from: Point, to: Point): string[] {
  const [x0, x1] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [y0, y1] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  const isIn = ({ x, y }: Point) => x >= x0 && x <= x1 && y >= y0 && y <= y1;
  return outlinesOf(scene)
    .filter(({ points }) => points.every(isIn))
    .map(({ id }) => id);
}

function outlinesOf({ room, machines, tables, things, hoods, runs }: Scene): { id: string; points: readonly Point[] }[] {
  return [
    ...machines.map(({ machine, footprint }) => ({ id: machine.id, points: footprint })),
    ...tables.map(({ table, outline }) => ({ id: table.id, points: outline })),
    ...things.map(({ thing, polygon }) => ({ id: thing.id, points: polygon })),
    ...hoods.map(({ hood, polygon }) => ({ id: hood.id, points: polygon })),
    ...runs.map(({ run, points }) => ({ id: run.id, points })),
    ...room.columns.map(({ column, polygon }) => ({ id: column.id, points: polygon })),
    ...room.floorDrains.map(({ drain, polygon }) => ({ id: drain.id, points: polygon })),
    ...room.stubs.map(({ stub, point }) => ({ id: stub.id, points: [point] })),
  ];
}
