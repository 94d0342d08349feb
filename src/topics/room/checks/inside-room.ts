import { containsPoint, isNear, measureProtrusion, type Polygon, type Segment, strip, sub } from '../../../geometry';
import { areaPlace, type Check, createMessages, type Measurement, type Name, type NoParams, nameBody, nameOwner } from '../../../rules';
import { memoizeByIdentity, type PlacedRoom, type PlacedRun, type Scene, type Solid } from '../../../scene';
import { DRAWING_TOLERANCE, isOver } from './support/bodies';
import { offerMove } from './support/freePlace';

export const check: Check = {
  id: 'inside-room',
  order: 150,
  title: 'Everything stands inside the room',
  group: 'room',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'geometry',
    text: 'A body cannot reach into a wall. 1 mm is left to drawing; a run leaves the room once, at its outlet.',
  },
  why: 'What reaches into a wall on paper does not go in on the day, or a wall must be moved.',
  measure: (scene) => {
    const held = scene.solids.filter(isHeld);
    const out = [
      ...[...findWorst(scene, held).values()].map((worst) => measureOut(scene, worst)),
      ...[...findHighest(scene, held).values()].map((solid) => measureAbove(scene, solid)),
    ];
    return out.length > 0 || held.length + scene.runs.length === 0 ? out : [measureAll(scene)];
  },
};

/** What is said of what stands in the room. Lengths in mm. */
export interface InsideRoomMessages {
  'inside-room/out': { thing: Name; by: number };
  'inside-room/above-ceiling': { body: Name; by: number };
  'inside-room/within-walls': NoParams;
  'inside-room/within-walls-and-ceiling': NoParams;
}

const say = createMessages<InsideRoomMessages>();

/** Columns may stand in walls; the doors rise within their machine; runs are followed along their way. */
const isHeld = ({ kind }: Solid) => kind !== 'column' && kind !== 'door-lift' && kind !== 'run';

/** A piece of something, how far it reaches out of the room, and the way back in. */
interface Out {
  owner: string;
  piece: Polygon;
  by: number;
  way: Segment;
}

/** Of each owner the piece that reaches out farthest. */
function findWorst({ room, runs }: Scene, held: readonly Solid[]): Map<string, Out> {
  const worst = new Map<string, Out>();
  for (const out of [...held.flatMap((solid) => bodyOut(solid, room)), ...runs.flatMap((run) => runOut(run, room))]) {
    if (out.by > (worst.get(out.owner)?.by ?? 0) + 1e-6) worst.set(out.owner, out);
  }
  return worst;
}

/** What of a body is out. It is kept with the body: while one thing is dragged, the others are where they were. */
const bodyOut = memoizeByIdentity(({ pieces, owner }: Solid, room: PlacedRoom): Out[] =>
  pieces.flatMap((piece) => pieceOut(owner, piece, room)),
);

const runOut = memoizeByIdentity((run: PlacedRun, room: PlacedRoom): Out[] =>
  legsInside(run, room).flatMap((piece) => pieceOut(run.run.id, piece, room)),
);

function pieceOut(owner: string, piece: Polygon, { outline }: PlacedRoom): Out[] {
  const { by, place } = measureProtrusion(outline, piece);
  return place !== null && isOver(by) ? [{ owner, piece, by, way: place }] : [];
}

/**
 * Legs of a run that must lie in the room: all before the one that leaves it for good. A run that
 * leaves the room and comes back reaches out of it.
 */
function legsInside({ points, run }: PlacedRun, { outline }: PlacedRoom): Polygon[] {
  const last = points.findLastIndex((p) => containsPoint(outline, p));
  return points.slice(0, Math.max(0, last)).flatMap((a, i) => {
    const b = points[i + 1] ?? a;
    return isNear(a, b) ? [] : strip([a, b], run.diameter / 2, run.diameter / 2).pieces;
  });
}

function measureOut(scene: Scene, { owner, piece, by, way }: Out): Measurement {
  return {
    subjects: [owner],
    place: areaPlace(piece),
    value: by,
    limit: DRAWING_TOLERANCE,
    message: say('inside-room/out', { thing: nameOwner(scene, owner), by }),
    repairs: offerMove(scene, owner, [sub(way.b, way.a)]),
  };
}

/** Of each owner the highest body, where it is above the ceiling. Only a run may go through the ceiling. */
function findHighest({ room: { ceilingHeight } }: Scene, held: readonly Solid[]): Map<string, Solid> {
  const highest = new Map<string, Solid>();
  for (const solid of ceilingHeight === null ? [] : held) {
    if (isOver(solid.zTo - (ceilingHeight ?? 0)) && solid.zTo > (highest.get(solid.owner)?.zTo ?? 0)) highest.set(solid.owner, solid);
  }
  return highest;
}

function measureAbove(scene: Scene, solid: Solid): Measurement {
  const by = solid.zTo - (scene.room.ceilingHeight ?? solid.zTo);
  return {
    part: 'ceiling',
    subjects: [solid.owner],
    place: areaPlace(...solid.pieces),
    value: by,
    limit: DRAWING_TOLERANCE,
    message: say('inside-room/above-ceiling', { body: nameBody(scene, solid), by }),
  };
}

const measureAll = ({ room }: Scene): Measurement => ({
  subjects: [],
  place: areaPlace(room.outline),
  value: 0,
  limit: DRAWING_TOLERANCE,
  message: say(room.ceilingHeight === null ? 'inside-room/within-walls' : 'inside-room/within-walls-and-ceiling'),
});
