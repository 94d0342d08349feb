import type { Polygon } from '../geometry';
import { memoizeByIdentity } from './memoizeByIdentity';
import type { Scene, Solid, SolidKind } from './types';

/** Something that a walking person can't pass through, in plan. */
export interface FloorObstacle {
  owner: string;
  polygon: Polygon;
}

/** Bodies that begin below this stop a walking person. */
const HEAD_HEIGHT = 2000;

/**
 * Bodies that never stand on the floor of their own: people step under the lip of a canopy hood, and
 * open doors rise within the machine's footprint.
 */
const OVERHEAD: ReadonlySet<SolidKind> = new Set<SolidKind>(['hood', 'door-lift']);

/**
 * Everything that blocks the floor, as convex pieces. A table blocks it whole, since its legs stand
 * under all of it. Walls are not among them: the outline of the room is.
 */
export const floorObstacles = (scene: Pick<Scene, 'solids'>): FloorObstacle[] => obstaclesOf(scene.solids);

const obstaclesOf = memoizeByIdentity((solids: readonly Solid[]): FloorObstacle[] =>
  solids
    .filter(({ kind, zFrom }) => zFrom < HEAD_HEIGHT && !OVERHEAD.has(kind))
    .flatMap(({ owner, pieces }) => pieces.map((polygon) => ({ owner, polygon }))),
);
