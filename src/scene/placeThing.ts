import { centredRectangle, rotate } from '../geometry';
import type { Thing, ThingKind } from '../plan';
import { hasSameFields } from './hasSameFields';
import { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
import type { Furnishing, PlacedThing } from './types';

/** A free-standing thing. */
export const placeThing = memoizeByIdentity(
  (thing: Thing, at: number): PlacedThing => ({
    at,
    thing,
    name: nameOf(thing),
    polygon: centredRectangle(thing, thing.rotationDeg, thing.width, thing.depth),
    front: rotate({ x: 0, y: 1 }, thing.rotationDeg),
  }),
);

/** A thing as it is, wherever it stands. */
export const furnish = memoizeByIdentity(
  ({ x: _x, y: _y, rotationDeg: _rotationDeg, ...thing }: Thing, at: number): Furnishing => ({
    at,
    thing,
    name: nameOf(thing),
  }),
);

/** One without a name of its own goes by the usual one. */
const nameOf = ({ name, kind }: Pick<Thing, 'name' | 'kind'>) => (name.trim() === '' ? USUAL_NAMES[kind] : name);

const USUAL_NAMES: Record<ThingKind, string> = {
  'three-compartment-sink': 'Three-compartment sink',
  'hand-sink': 'Hand sink',
  shelving: 'Shelving',
  cart: 'Cart',
  bin: 'Bin',
  'work-table': 'Work table',
  'panel-board': 'Panel board',
  other: 'Thing',
};

/** The things without their places; the same list as before while no more than their places changed. */
export const keepFurnishings = createListKeeper<Furnishing>(
  (one, other) => one === other || (one.at === other.at && hasSameFields(one.thing, other.thing)),
);
