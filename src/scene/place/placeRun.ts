import { bendsOf, distance3, type Point3, pathLength3, pointAt3 } from '../../geometry';
import type { Run } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedMachine, PlacedRun } from '../types';

/** A collar points up, so a run that leaves it sideways begins with a bend. */
const UP: Point3 = { x: 0, y: 0, z: 1 };

/** A run from its machine's collar to the open air; its own points alone where the machine has no collar. */
export const placeRun = memoizeByIdentity((run: Run, machine: PlacedMachine | null): PlacedRun => {
  const collar = machine?.collar ?? null;
  const points = withoutRepeats([...(collar === null ? [] : [collar]), ...run.points.map(({ x, y, z }) => ({ x, y, z }))]);
  const length = pathLength3(points);
  return {
    run,
    points,
    length,
    bends: bendsOf(points, collar === null ? undefined : UP),
    fan: run.fan === null ? null : placeFan(run.fan.at, points, length),
  };
});

function placeFan(at: number, points: readonly Point3[], length: number): PlacedRun['fan'] {
  return { at, point: pointAt3(points, at), isOnRun: at >= 0 && at <= length + 1e-6 };
}

const withoutRepeats = (points: readonly Point3[]): Point3[] =>
  points.filter((point, i) => {
    const before = points[i - 1];
    return before === undefined || distance3(before, point) > 1e-6;
  });
