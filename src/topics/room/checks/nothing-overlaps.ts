import { clipConvex, isNearBounds, type Point, scale } from '../../../geometry';
import { areaPlace, type Check, createMessages, type Measurement, type Name, nameBody } from '../../../rules';
import type { Scene, Solid } from '../../../scene';
import { type Clash, DRAWING_TOLERANCE, findClash, isBody, isMeant, listExits } from './support/bodies';
import { moveAway, moveId } from './support/freePlace';

export const check: Check = {
  id: 'nothing-overlaps',
  order: 140,
  title: 'Nothing stands in something else',
  group: 'room',
  unit: 'mm',
  relation: 'at-most',
  source: { kind: 'geometry', text: 'Two bodies cannot take the same place. 1 mm is left to drawing.' },
  why: 'What overlaps on paper does not go in on the day. Joints, open doors and hoods over their machines have checks of their own.',
  measure: (scene) => {
    const bodies = scene.solids.filter(isBody);
    const clashes = findClashes(scene, bodies);
    if (clashes.length > 0) return clashes.map((clash) => measureClash(scene, clash));
    return new Set(bodies.map(({ owner }) => owner)).size < 2 ? [] : [measureAll(scene, bodies)];
  },
};

/** What is said of things that overlap. Lengths in mm. */
export interface NothingOverlapsMessages {
  'nothing-overlaps/overlap': { one: Name; other: Name; depth: number };
  'nothing-overlaps/apart': { things: number };
}

const say = createMessages<NothingOverlapsMessages>();

/** Each bad pair of owners once, by its deepest overlap. */
function findClashes(scene: Scene, bodies: readonly Solid[]): Clash[] {
  const worst = new Map<string, Clash>();
  for (let i = 0; i < bodies.length; i += 1) {
    const one = bodies[i] as Solid;
    for (let j = i + 1; j < bodies.length; j += 1) {
      const other = bodies[j] as Solid;
      if (one.owner === other.owner || !isNearBounds(one.bounds, other.bounds, -DRAWING_TOLERANCE)) continue;
      const clash = findClash(one, other);
      if (clash === null || isMeant(scene, one, other)) continue;
      const pair = JSON.stringify([one.owner, other.owner].sort());
      if (clash.depth > (worst.get(pair)?.depth ?? 0)) worst.set(pair, clash);
    }
  }
  return [...worst.values()];
}

function measureClash(scene: Scene, { one, other, depth, pieces }: Clash): Measurement {
  return {
    subjects: [one.owner, other.owner],
    place: areaPlace(clipConvex(...pieces)),
    value: depth,
    limit: DRAWING_TOLERANCE,
    message: say('nothing-overlaps/overlap', { one: nameBody(scene, one), other: nameBody(scene, other), depth }),
    repairs: {
      ids: [moveId(other.owner), moveId(one.owner)],
      find: () => partBodies(scene, one, other, listExits(pieces)),
    },
  };
}

/** Moves one of two bodies out of the other; `exits` are ways for the second. */
const partBodies = (scene: Scene, one: Solid, other: Solid, exits: readonly Point[]) => [
  ...moveAway(scene, other.owner, exits),
  ...moveAway(
    scene,
    one.owner,
    exits.map((exit) => scale(exit, -1)),
  ),
];

function measureAll(scene: Scene, bodies: readonly Solid[]): Measurement {
  const things = new Set(bodies.map(({ owner }) => owner)).size;
  return {
    subjects: [],
    place: areaPlace(scene.room.outline),
    value: 0,
    limit: DRAWING_TOLERANCE,
    message: say('nothing-overlaps/apart', { things }),
  };
}
