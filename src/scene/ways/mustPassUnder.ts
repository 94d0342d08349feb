import { type Body, containsPoint, createPassageSearch, type Point } from '../../geometry';
import { openWideBay } from '../room/doorway';
import type { Scene } from '../types';
import { floorBodies } from './floorObstacles';

/**
 * Whether people must go, or stand, under something that hangs over the floor: one of the places lies below it, or no door has a
 * way of `width` to each place beside it where there is one below it. In which room a place makes its own way narrow is not asked.
 * Two places of its own search for every door: for what hangs too low, which is rare.
 */
export function mustPassUnder(
  { room, solids }: Pick<Scene, 'room' | 'solids'>,
  hanging: Body,
  places: readonly Point[],
  width: number,
): boolean {
  if (places.some((place) => containsPoint(hanging.polygon, place))) return true;
  const standing = floorBodies({ solids });
  const reached = (obstacles: readonly Body[]) => {
    const isReached = places.map(() => false);
    for (const opening of room.openings.filter(({ isWay }) => isWay)) {
      const { outline, from } = openWideBay(opening, room, width);
      const search = createPassageSearch(outline, obstacles, width);
      for (const [i, place] of places.entries()) {
        if (search.solve([from, place], undefined, 0)(0, 1).width >= width - 1e-6) isReached[i] = true;
      }
    }
    return isReached;
  };
  const beside = reached([...standing, hanging]);
  return beside.some((isReached) => !isReached) && reached(standing).some((isReached, i) => isReached && beside[i] === false);
}
