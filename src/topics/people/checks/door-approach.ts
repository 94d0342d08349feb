import { along, directionTo, floorBefore, type Segment } from '../../../geometry';
import { areaPlace, type Check, type Measurement, type Source } from '../../../rules';
import { HEAD_HEIGHT, type PlacedOpening, type Scene, type Solid } from '../../../scene';
import type { Formatter } from '../../../units';
import { DOOR_PULL, DOOR_PUSH, measureFreeDepth } from '../../room';

export const check: Check = {
  id: 'door-approach',
  order: 730,
  title: 'A wheelchair has floor to open a door',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'ADA Standards',
    section: '404.2.4.1, as notes on the Florida Building Code have it: front approach, pull side, 60 in deep and 18 in beside the latch',
    confidence: 'secondary',
  },
  why: 'It is asked where the room must be accessible: one door of it then needs free floor before it and beside its latch. The floor outside the room is not seen here, and carts are taken to be rolled aside. A straight approach is taken; the local official decides.',
  measure: (scene) => (scene.machines.length === 0 ? [] : measureDoors(scene)),
};

const PUSH_SOURCE: Source = {
  kind: 'published',
  document: 'ADA Standards',
  section: '404.2.4.1: front approach, push side, 48 in deep and, with a closer and a latch, 12 in beside the latch',
  confidence: 'memory',
};

/** Of a door seen from the room: free floor before it and beside its latch, and what is asked of both. */
interface Approach {
  door: PlacedOpening;
  isPull: boolean;
  depth: number;
  /** null for two leaves, whose latch is in the middle. */
  beside: { width: number; face: Segment } | null;
  asked: { depth: number; beside: number };
}

/** One door that complies is enough: the best is held. A cased opening has no door to open. */
function measureDoors(scene: Scene): Measurement[] {
  const ways = scene.room.openings.filter(({ isWay }) => isWay);
  if (ways.some(({ opening }) => opening.kind === 'cased-opening')) return [];
  // A hood that hangs too low over the door is the headroom's business.
  const carts = new Set(scene.things.filter(({ thing }) => thing.kind === 'cart').map(({ thing }) => thing.id));
  const counts = ({ owner, kind }: Solid) => kind !== 'hood' && !carts.has(owner);
  const approaches = ways.map((door) => measureApproach(scene, door, counts));
  const [first, ...others] = approaches;
  if (first === undefined) return [];
  const best = others.reduce((least, one) => (lackOf(one) < lackOf(least) - 1e-6 ? one : least), first);
  return [holdDepth(best), ...(best.beside === null ? [] : [holdBeside(best, best.beside)])];
}

const lackOf = ({ depth, beside, asked }: Approach) =>
  Math.max(0, asked.depth - depth) + Math.max(0, asked.beside - (beside?.width ?? asked.beside));

/** A door that swings into the room is pulled from within. */
function measureApproach(scene: Scene, door: PlacedOpening, counts: (solid: Solid) => boolean): Approach {
  const { opening, segment, wall } = door;
  const isPull = opening.swing === 'in';
  const asked = isPull ? PULL : PUSH;
  const { depth } = measureFreeDepth(scene, {
    face: segment,
    normal: wall.inward,
    width: opening.width,
    height: HEAD_HEIGHT,
    counts,
    reach: asked.depth,
  });
  const common = { door, isPull, depth, asked };
  if (opening.kind === 'double-door') return { beside: null, ...common };
  const [hinge, latch] = opening.hinge === 'start' ? [segment.a, segment.b] : [segment.b, segment.a];
  const face = { a: latch, b: along(latch, wall.inward, Math.max(1, common.depth)) };
  const found = measureFreeDepth(scene, {
    face,
    normal: directionTo(hinge, latch),
    width: depth,
    height: HEAD_HEIGHT,
    counts,
    reach: asked.beside,
  });
  return { beside: { width: found.depth, face }, ...common };
}

const inMm = ({ depthM, besideM }: { depthM: number; besideM: number }) => ({ depth: depthM * 1000, beside: besideM * 1000 });
const [PULL, PUSH] = [inMm(DOOR_PULL), inMm(DOOR_PUSH)];

const commonOf = ({ door, isPull }: Approach) => ({
  subjects: [door.opening.id],
  severity: 'watch' as const,
  ...(isPull ? {} : { source: PUSH_SOURCE }),
});

function holdDepth(approach: Approach): Measurement {
  const { door, depth, asked } = approach;
  return {
    part: 'depth',
    ...commonOf(approach),
    place: areaPlace(floorBefore(door.segment, door.wall.inward, asked.depth)),
    value: depth,
    limit: asked.depth,
    say: (f) =>
      depth >= asked.depth - 1e-6
        ? `Before the door ${f.length(asked.depth)} of floor is free, ${sideWords(approach)}.`
        : `Before the door only ${f.length(depth)} of floor is free; ${askedWords(approach, asked.depth, f)}. Clear the floor before it.`,
  };
}

function holdBeside(approach: Approach, { width, face }: NonNullable<Approach['beside']>): Measurement {
  const { door, asked } = approach;
  const [hinge, latch] = door.opening.hinge === 'start' ? [door.segment.a, door.segment.b] : [door.segment.b, door.segment.a];
  return {
    part: 'latch',
    ...commonOf(approach),
    place: areaPlace(floorBefore(face, directionTo(hinge, latch), asked.beside)),
    value: width,
    limit: asked.beside,
    say: (f) =>
      width >= asked.beside - 1e-6
        ? `Beside the latch of the door ${f.length(asked.beside)} of floor is free, ${sideWords(approach)}.`
        : `Beside the latch of the door only ${f.length(width)} of floor is free; ${askedWords(approach, asked.beside, f)}. Clear the floor there, or hang the door on its other jamb.`,
  };
}

const sideWords = ({ isPull }: Approach) => (isPull ? 'where it is pulled open' : 'where it is pushed open');

const askedWords = (approach: Approach, asked: number, f: Formatter) =>
  `where the room must be accessible ${f.length(asked)} is asked ${approach.isPull ? 'on the side that pulls' : 'on the side that pushes'}${approach.isPull || asked !== PUSH.beside ? '' : ' if it has a closer and a latch'}`;
