import {
  type Bounds,
  containsPoint,
  isNear,
  isNearBounds,
  measureProtrusion,
  type Polygon,
  type Segment,
  strip,
  sub,
} from '../../geometry';
import type { PlacedRun, Scene, Solid } from '../../scene';
import { boxOf, DRAWING_TOLERANCE, isOver } from '../support/bodies';
import { bodyName, ownerName } from '../support/bodyNames';
import { moveAway } from '../support/freePlace';
import { areaPlace } from '../support/places';
import { sentence } from '../support/words';
import type { Check, Measurement } from '../types';

export const check: Check = {
  id: 'inside-room',
  title: 'Everything stands inside the room',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'geometry',
    text: 'A body cannot reach into a wall. 1 mm is left to drawing; a run leaves the room once, at its outlet.',
  },
  why: 'What reaches into a wall on paper does not go in on the day, or a wall must be moved.',
  measure: (scene) => {
    const owners = [...new Set(scene.solids.filter(isHeld).map(({ owner }) => owner)), ...scene.runs.map(({ run }) => run.id)];
    const out = owners.flatMap((owner) => [...measureWalls(scene, owner), ...measureCeiling(scene, owner)]);
    return out.length > 0 || owners.length === 0 ? out : [measureAll(scene)];
  },
};

/** Columns may stand in walls; the doors rise within their machine; runs are followed along their way. */
const isHeld = ({ kind }: Solid) => kind !== 'column' && kind !== 'door-lift' && kind !== 'run';

function measureWalls(scene: Scene, owner: string): Measurement[] {
  const worst = findWorst(scene, piecesOf(scene, owner));
  if (worst === null) return [];
  return [
    {
      subjects: [owner],
      place: areaPlace(worst.piece),
      value: worst.by,
      limit: DRAWING_TOLERANCE,
      say: (f) => sentence(`${ownerName(scene, owner)} reaches ${f.length(worst.by)} out of the room. Move it in.`),
      repairs: () => moveAway(scene, owner, [sub(worst.way.b, worst.way.a)]),
    },
  ];
}

/** A run may go through the ceiling. */
function measureCeiling(scene: Scene, owner: string): Measurement[] {
  const { ceilingHeight } = scene.room;
  const [highest] = scene.solids.filter((solid) => solid.owner === owner && isHeld(solid)).toSorted((a, b) => b.zTo - a.zTo);
  if (ceilingHeight === null || highest === undefined || !isOver(highest.zTo - ceilingHeight)) return [];
  const by = highest.zTo - ceilingHeight;
  return [
    {
      part: 'ceiling',
      subjects: [owner],
      place: areaPlace(...highest.pieces),
      value: by,
      limit: DRAWING_TOLERANCE,
      say: (f) => sentence(`${bodyName(scene, highest)} reaches ${f.length(by)} above the ceiling. Lower it, or make it lower.`),
    },
  ];
}

/** The piece that reaches out farthest, and the way back in. */
function findWorst({ room }: Scene, pieces: readonly Polygon[]): { piece: Polygon; by: number; way: Segment } | null {
  let worst: ReturnType<typeof findWorst> = null;
  for (const piece of pieces) {
    const { by, place } = measureProtrusion(room.outline, piece);
    if (place !== null && isOver(by) && by > (worst?.by ?? 0) + 1e-6) worst = { piece, by, way: place };
  }
  return worst;
}

function piecesOf(scene: Scene, owner: string): Polygon[] {
  const run = scene.runs.find((item) => item.run.id === owner);
  if (run !== undefined) return legsInside(scene, run);
  const near = scene.solids.filter((solid) => solid.owner === owner && isHeld(solid) && !isWellInside(scene, solid));
  return near.flatMap(({ pieces }) => pieces);
}

/**
 * Legs of a run that must lie in the room: all before the one that leaves it for good. A run that
 * leaves the room and comes back reaches out of it.
 */
function legsInside({ room }: Scene, { points, run }: PlacedRun): Polygon[] {
  const last = points.findLastIndex((p) => containsPoint(room.outline, p));
  return points.slice(0, Math.max(0, last)).flatMap((a, i) => {
    const b = points[i + 1] ?? a;
    if (isNear(a, b)) return [];
    return strip([a, b], run.diameter / 2, run.diameter / 2).pieces;
  });
}

/** No wall comes near it, and one corner is inside: nothing more to measure. */
function isWellInside({ room }: Scene, solid: Solid): boolean {
  const box = boxOf(solid);
  const corner = solid.pieces[0]?.[0];
  return corner !== undefined && room.walls.every((wall) => !isNearBounds(box, boxOfWall(wall))) && containsPoint(room.outline, corner);
}

const boxOfWall = ({ a, b }: Scene['room']['walls'][number]): Bounds => ({
  minX: Math.min(a.x, b.x),
  minY: Math.min(a.y, b.y),
  maxX: Math.max(a.x, b.x),
  maxY: Math.max(a.y, b.y),
});

const measureAll = ({ room }: Scene): Measurement => ({
  subjects: [],
  place: areaPlace(room.outline),
  value: 0,
  limit: DRAWING_TOLERANCE,
  say: () =>
    room.ceilingHeight === null ? 'Everything stands inside the walls.' : 'Everything stands inside the walls and under the ceiling.',
});
