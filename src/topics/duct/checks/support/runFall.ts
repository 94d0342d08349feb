import { distance, type Point3 } from '../../../../geometry';

/** A stretch of a run that is not upright. */
export interface RunLeg {
  from: Point3;
  to: Point3;
  /** Height over length, either way. */
  slope: number;
}

/** Heights nearer to each other than this are one. */
const LEVEL = 1e-3;

/** Stretches of a run that do not stand upright: those that need a fall. */
export function listLegs(points: readonly Point3[]): RunLeg[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] ?? to;
    const along = distance(from, to);
    return along <= LEVEL ? [] : [{ from, to, slope: Math.abs(to.z - from.z) / along }];
  });
}

/** Places where the run sags: lower than what comes before and after, so that no water leaves them by itself. */
export function listSags(points: readonly Point3[]): Point3[] {
  return points.filter((point, i) => {
    const before = lastOther(points.slice(0, i), point.z);
    const after = points.slice(i + 1).find(({ z }) => Math.abs(z - point.z) > LEVEL);
    const isFirstOfLevel = Math.abs((points[i - 1]?.z ?? Number.POSITIVE_INFINITY) - point.z) > LEVEL;
    return isFirstOfLevel && before !== undefined && after !== undefined && before.z > point.z && after.z > point.z;
  });
}

const lastOther = (points: readonly Point3[], height: number) => points.findLast(({ z }) => Math.abs(z - height) > LEVEL);
