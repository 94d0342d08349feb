import { centredRectangle, rotate } from '../../geometry';
import type { Thing, ThingKind } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedThing, Solid } from '../types';
import { createSolid } from './createSolid';

/** A free-standing thing in its place. */
export const placeThing = memoizeByIdentity(
  (thing: Thing, at: number): PlacedThing => ({
    at,
    thing,
    name: nameOf(thing),
    polygon: centredRectangle(thing, thing.rotationDeg, thing.width, thing.depth),
    front: rotate({ x: 0, y: 1 }, thing.rotationDeg),
  }),
);

/** Its body. */
export const deriveThingSolid = memoizeByIdentity(
  ({ thing, polygon }: PlacedThing): Solid =>
    createSolid({ owner: thing.id, kind: 'thing', pieces: [polygon], zFrom: 0, zTo: thing.height }),
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
