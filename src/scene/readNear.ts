import { type Bounds, boundsOf, containsPoint, gather, isNearBounds, isSameList, type Point, type Point3 } from '../geometry';
import type { ThingKind } from '../plan';
import { hasSameFields } from './hasSameFields';
import { readDerived } from './rememberReads';
import type { Ductwork, Line, PlacedHood, PlacedThing, Scene, Solid } from './types';

/** The bodies that come into a box, in the plan: what moves elsewhere does not count as read. */
export const solidsIn = (scene: Scene, box: Bounds): readonly Solid[] =>
  readDerived(scene, ({ solids }) => solids.filter((solid) => isIn(solid, box)), isSameList);

const isIn = ({ bounds, pieces }: Solid, box: Bounds): boolean =>
  isNearBounds(bounds, box) && (pieces.length === 1 || pieces.some((piece) => isNearBounds(boundsOf(piece), box)));

/** The things of some kinds: what else moves does not count as read. */
export const thingsOf = (scene: Scene, ...kinds: ThingKind[]): readonly PlacedThing[] =>
  readDerived(scene, ({ things }) => things.filter(({ thing }) => kinds.includes(thing.kind)), isSameList);

/** The things that stand over a place. */
export const thingsOver = (scene: Scene, place: Point): readonly PlacedThing[] =>
  readDerived(scene, ({ things }) => things.filter(({ polygon }) => containsPoint(polygon, place)), isSameList);

/** A line but for where its ware goes. */
export type Stance = Omit<Line, 'stations' | 'ways'>;

/** The lines but for their stations and ways: a shelf or a cart that moves does not count as read. */
export const stancesOf = (scene: Scene): readonly Stance[] =>
  readDerived<readonly Stance[]>(
    scene,
    ({ lines }) => lines,
    (one, other) => isSameList(one, other, isSameStance),
  );

const isSameStance = (one: Stance, other: Stance) =>
  one.machine === other.machine &&
  one.soiled === other.soiled &&
  one.clean === other.clean &&
  one.hand === other.hand &&
  one.inside === other.inside &&
  one.stand?.centre === other.stand?.centre &&
  one.stand?.width === other.stand?.width &&
  hasSameFields(one.configuration, other.configuration);

/** A hood and which machines are under it, wherever they stand there. */
export type Canopy = Pick<PlacedHood, 'hood' | 'polygon'> & { covers: readonly { machine: string }[] };

/** The hoods that cover a machine: one that moves under its hood does not count as read. */
export const canopiesOf = (scene: Scene): readonly Canopy[] =>
  readDerived<readonly Canopy[]>(
    scene,
    ({ hoods }) => hoods.filter(({ covers }) => covers.length > 0),
    (one, other) => isSameList(one, other, isSameCanopy),
  );

const isSameCanopy = (one: Canopy, other: Canopy) =>
  one.hood === other.hood && isSameList(one.covers, other.covers, (a, b) => a.machine === b.machine);

/** Where a run ends. */
export interface Outlet extends Ductwork {
  end: Point3;
}

/** The outlets of the runs: what moves at their other ends does not count as read. */
export const outletsOf = (scene: Scene): readonly Outlet[] =>
  readDerived<readonly Outlet[]>(
    scene,
    ({ runs }) =>
      gather(runs, ({ run, points }) => {
        const end = points.at(-1);
        return end === undefined ? [] : [{ run, end }];
      }),
    (one, other) => isSameList(one, other, isSameOutlet),
  );

const isSameOutlet = (one: Outlet, other: Outlet) => one.run === other.run && hasSameFields(one.end, other.end);
