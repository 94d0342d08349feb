import { type Bounds, boundsOf, containsPoint, isNearBounds, type Point } from '../../geometry';
import type { ThingKind } from '../../plan';
import type { PlacedHood, PlacedThing, Scene, Solid } from '../types';

/** The bodies that come into a box, in the plan. */
export const solidsIn = ({ solids }: Pick<Scene, 'solids'>, box: Bounds): readonly Solid[] =>
  solids.filter(
    ({ bounds, pieces }) =>
      isNearBounds(bounds, box) && (pieces.length === 1 || pieces.some((piece) => isNearBounds(boundsOf(piece), box))),
  );

/** The things of some kinds. */
export const thingsOf = ({ things }: Pick<Scene, 'things'>, ...kinds: ThingKind[]): readonly PlacedThing[] =>
  things.filter(({ thing }) => kinds.includes(thing.kind));

/** The things that stand over a place. */
export const thingsOver = ({ things }: Pick<Scene, 'things'>, place: Point): readonly PlacedThing[] =>
  things.filter(({ polygon }) => containsPoint(polygon, place));

/** The hoods that cover a machine. */
export const coveringHoods = ({ hoods }: Pick<Scene, 'hoods'>): readonly PlacedHood[] => hoods.filter(({ covers }) => covers.length > 0);

/** Whether a hood covers the machine, at least in part. */
export const isUnderHood = ({ hoods }: Pick<Scene, 'hoods'>, machine: string): boolean =>
  hoods.some(({ covers }) => covers.some((covered) => covered.machine === machine));
