import { type Body, createBody } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { FloorObstacle, Solid, SolidKind } from '../types';

/** Bodies that begin below this stop a walking person: what projects into an exit route leaves 6 ft 8 in, 29 CFR 1910.36(g)(1). */
export const HEAD_HEIGHT = 2032;

/** What begins above the knees and is no table, which has legs, hangs. */
const HANGS_FROM = 500;
const ON_LEGS: ReadonlySet<SolidKind> = new Set<SolidKind>(['table', 'backsplash']);

/**
 * Bodies that never stand on the floor of their own: people step under the lip of a canopy hood, and
 * open doors rise within the machine's footprint.
 */
const OVERHEAD: ReadonlySet<SolidKind> = new Set<SolidKind>(['hood', 'door-lift']);

/**
 * Everything that blocks the floor, as convex pieces. A table blocks it whole, since its legs stand
 * under all of it. Walls are not among them: the outline of the room is.
 */
export const floorObstacles = (scene: { solids: readonly Solid[] }): FloorObstacle[] => obstaclesOf(scene.solids);

/** The same, but for what they are of. */
export const floorBodies = (scene: { solids: readonly Solid[] }): readonly Body[] => bodiesOf(scene.solids);

const obstaclesOf = memoizeByIdentity((solids: readonly Solid[]): FloorObstacle[] => solids.flatMap(({ floor }) => floor));

const bodiesOf = memoizeByIdentity((solids: readonly Solid[]): Body[] => {
  const bodies: Body[] = [];
  for (const { body } of obstaclesOf(solids)) bodies.push(body);
  return bodies;
});

/** What of a body stands on the floor. */
export function standOnFloor({ owner, kind, pieces, zFrom }: Pick<Solid, 'owner' | 'kind' | 'pieces' | 'zFrom'>): FloorObstacle[] {
  if (zFrom >= HEAD_HEIGHT || OVERHEAD.has(kind)) return [];
  const hangsAt = zFrom >= HANGS_FROM && !ON_LEGS.has(kind) ? zFrom : null;
  return pieces.map((polygon) => ({ owner, kind, polygon, body: createBody(polygon), hangsAt }));
}
