import { centredRectangle, rotate } from '../geometry';
import type { Thing, ThingKind } from '../plan';
import { memoizeByIdentity } from './memoizeByIdentity';
import type { PlacedThing } from './types';

/** A free-standing thing; one without a name of its own goes by the usual one. */
export const placeThing = memoizeByIdentity(
  (thing: Thing): PlacedThing => ({
    thing,
    polygon: centredRectangle(thing, thing.rotationDeg, thing.width, thing.depth),
    front: rotate({ x: 0, y: 1 }, thing.rotationDeg),
    name: thing.name.trim() === '' ? USUAL_NAMES[thing.kind] : thing.name,
  }),
);

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
