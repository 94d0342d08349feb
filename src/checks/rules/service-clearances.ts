import { clipHalfPlane, directionTo, dot, type Point, type Polygon, scale, sub } from '../../geometry';
import type { PlacedMachine, PlacedSide, Scene } from '../../scene';
import { DRAWING_TOLERANCE, isBody } from '../support/bodies';
import { bodyName } from '../support/bodyNames';
import { moveAway } from '../support/freePlace';
import { machineName } from '../support/names';
import { areaPlace } from '../support/places';
import { sentence, sideWords } from '../support/words';
import type { Check, Measurement } from '../types';

/** Walls are looked for so far; beyond it a side is simply free. */
const LOOK_AHEAD = 10_000;

export const check: Check = {
  id: 'service-clearances',
  title: 'Room for service',
  group: 'room',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'data-sheet', text: 'Free space for service on each side without a table.' },
  why: 'Panels come off, pumps and heaters come out. Without the room on the data sheet the machine must be pulled out for every repair.',
  measure: (scene) => scene.machines.flatMap((machine) => machine.serviceZones.map((zone) => measureZone(scene, machine, zone))),
};

/** What stands nearest before a side. */
interface Nearest {
  distance: number;
  name: string;
  owner: string | null;
}

function measureZone(scene: Scene, machine: PlacedMachine, { side, depth, polygon }: PlacedMachine['serviceZones'][number]): Measurement {
  const placed = machine.sides[side];
  const nearest = findNearest(scene, machine, placed);
  const where = `${machineName(scene, machine)} at ${sideWords(side)}`;
  const missing = depth - nearest.distance;
  return {
    part: side,
    subjects: [machine.machine.id, ...(missing > 1e-6 && nearest.owner !== null ? [nearest.owner] : [])],
    place: areaPlace(polygon),
    value: nearest.distance,
    limit: depth,
    say: (f) =>
      sentence(
        missing <= 1e-6
          ? `${f.length(nearest.distance)} is free before ${where}; service needs ${f.length(depth)}.`
          : `${nearest.name} leaves ${f.length(nearest.distance)} before ${where}; service needs ${f.length(depth)}. Make ${f.length(missing)} more room.`,
      ),
    repairs: () => (missing > 1e-6 && nearest.owner !== null ? moveAway(scene, nearest.owner, [scale(placed.normal, missing)]) : []),
  };
}

function findNearest(scene: Scene, machine: PlacedMachine, side: PlacedSide): Nearest {
  let nearest: Nearest = { distance: Math.max(0, side.wallDistance ?? LOOK_AHEAD), name: 'the wall', owner: null };
  for (const solid of scene.solids) {
    if (solid.owner === machine.machine.id || !isBody(solid) || solid.zFrom >= machine.sheet.height) continue;
    for (const piece of solid.pieces) {
      const distance = distanceBefore(side, piece);
      if (distance !== null && distance < nearest.distance) nearest = { distance, name: bodyName(scene, solid), owner: solid.owner };
    }
  }
  return nearest;
}

/** How far out a piece begins before a side; null when it does not stand before it. */
function distanceBefore({ edge: { a, b }, normal }: PlacedSide, piece: Polygon): number | null {
  const along = directionTo(a, b);
  const isBehind = piece.every((p) => dot(sub(p, a), normal) <= DRAWING_TOLERANCE);
  if (isBehind) return null;
  const outward = clipHalfPlane(piece, a, normal);
  const before = clipHalfPlane(clipHalfPlane(outward, shifted(a, along), along), shifted(b, scale(along, -1)), scale(along, -1));
  return before.length === 0 ? null : Math.max(0, Math.min(...before.map((p) => dot(sub(p, a), normal))));
}

/** A hair inside the end of the side, so that what only touches its corner does not count. */
const shifted = (p: Point, d: Point): Point => ({ x: p.x + d.x * DRAWING_TOLERANCE, y: p.y + d.y * DRAWING_TOLERANCE });
