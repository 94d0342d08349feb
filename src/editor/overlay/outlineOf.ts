import type { Point } from '../../geometry';
import type { Scene } from '../../scene';

/** A line around a thing, or along it. */
export interface Outline {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** Size of the square around a stub, half of it, mm. */
const STUB = 60;

/** The lines that mark a thing of the plan. */
export function outlineOf({ room, machines, tables, things, hoods, runs }: Scene, id: string): Outline[] {
  const closed = (points: readonly Point[]): Outline => ({ points, closed: true });
  return [
    ...machines.filter(({ machine }) => machine.id === id).map(({ footprint }) => closed(footprint)),
    ...tables.filter(({ table }) => table.id === id).map((table) => closed(table.outline)),
    ...tables
      .flatMap(({ fittings }) => fittings)
      .filter(({ fitting }) => fitting.id === id)
      .map(({ polygon }) => closed(polygon)),
    ...things.filter(({ thing }) => thing.id === id).map(({ polygon }) => closed(polygon)),
    ...hoods.filter(({ hood }) => hood.id === id).map(({ polygon }) => closed(polygon)),
    ...runs.filter(({ run }) => run.id === id).map(({ points }) => ({ points, closed: false })),
    ...room.walls.filter((wall) => wall.id === id).map(({ a, b }) => ({ points: [a, b], closed: false })),
    ...room.openings.filter(({ opening }) => opening.id === id).map(({ segment }) => ({ points: [segment.a, segment.b], closed: false })),
    ...room.columns.filter(({ column }) => column.id === id).map(({ polygon }) => closed(polygon)),
    ...room.floorDrains.filter(({ drain }) => drain.id === id).map(({ polygon }) => closed(polygon)),
    ...room.stubs.filter(({ stub }) => stub.id === id).map(({ point }) => closed(squareAbout(point))),
  ];
}

const squareAbout = ({ x, y }: Point): Point[] => [
  { x: x - STUB, y: y - STUB },
  { x: x + STUB, y: y - STUB },
  { x: x + STUB, y: y + STUB },
  { x: x - STUB, y: y + STUB },
];
