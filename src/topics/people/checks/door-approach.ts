import { along, directionTo, floorBefore, type Segment } from '../../../geometry';
import { areaPlace, type Check, createMessages, type Measurement, type Source } from '../../../rules';
import { HEAD_HEIGHT, type PlacedOpening, type Scene, type Solid } from '../../../scene';
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

/** What is said of the floor at a door. Lengths in mm. */
export interface DoorApproachMessages {
  'door-approach/depth-free': Asked;
  'door-approach/depth-short': Asked & { free: number };
  'door-approach/latch-free': Asked;
  'door-approach/latch-short': Asked & { free: number };
}

/** `side`: whether the door is pulled or pushed open from the room. */
interface Asked {
  side: 'pull' | 'push';
  asked: number;
}

const say = createMessages<DoorApproachMessages>();

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
    message:
      depth >= asked.depth - 1e-6
        ? say('door-approach/depth-free', { side: sideOf(approach), asked: asked.depth })
        : say('door-approach/depth-short', { side: sideOf(approach), asked: asked.depth, free: depth }),
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
    message:
      width >= asked.beside - 1e-6
        ? say('door-approach/latch-free', { side: sideOf(approach), asked: asked.beside })
        : say('door-approach/latch-short', { side: sideOf(approach), asked: asked.beside, free: width }),
  };
}

const sideOf = ({ isPull }: Approach) => (isPull ? 'pull' : 'push');
