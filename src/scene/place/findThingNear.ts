import { distanceBetweenPointAndConvex, type Point } from '../../geometry';
import type { Thing, ThingKind } from '../../plan';
import type { PlacedThing } from '../types';

/** Things that hold ware; a sink or a bin never does, whatever the plan says of its ware. */
const HOLDERS: ReadonlySet<ThingKind> = new Set<ThingKind>(['shelving', 'cart', 'work-table']);

/** Farther than this a thing no longer belongs to the line: about four steps. */
const REACH = 3000;

/** The nearest thing that holds ware of this kind, within 3 m of a place; null when there is none. */
export function findThingNear(place: Point | undefined, things: readonly PlacedThing[], ware: Thing['ware']): PlacedThing | null {
  if (place === undefined) return null;
  const found = things
    .filter(({ thing }) => thing.ware === ware && HOLDERS.has(thing.kind))
    .map((thing) => ({ thing, distance: distanceBetweenPointAndConvex(place, thing.polygon) }))
    .filter(({ distance }) => distance <= REACH);
  return (
    found.reduce<(typeof found)[number] | null>((best, item) => (best === null || item.distance < best.distance ? item : best), null)
      ?.thing ?? null
  );
}
