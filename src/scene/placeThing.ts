import { centredRectangle, rotate } from '../geometry';
import type { Thing, ThingKind } from '../plan';
import { createSolid } from './createSolid';
import { hasSameFields } from './hasSameFields';
import { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
import type { Furnishing, PlacedThing, Solid } from './types';

/** A free-standing thing: in its place, as it is wherever it stands, and its body. */
export interface StandingThing {
  placed: PlacedThing;
  furnishing: Furnishing;
  solid: Solid;
}

export const placeThing = memoizeByIdentity((thing: Thing, at: number): StandingThing => {
  const { x: _x, y: _y, rotationDeg, ...furnishing } = thing;
  const name = nameOf(thing);
  const polygon = centredRectangle(thing, rotationDeg, thing.width, thing.depth);
  return {
    placed: { at, thing, name, polygon, front: rotate({ x: 0, y: 1 }, rotationDeg) },
    furnishing: { at, thing: furnishing, name },
    solid: createSolid({ owner: thing.id, kind: 'thing', pieces: [polygon], zFrom: 0, zTo: thing.height }),
  };
});

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
