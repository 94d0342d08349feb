import { boundsOf, depthBefore, floorBefore, scale } from '../../../geometry';
import { areaPlace, bodyName, type Check, type Measurement, machineName, sentence, sideWords } from '../../../rules';
import { type PlacedMachine, type PlacedSide, type Scene, solidsIn } from '../../../scene';
import { DRAWING_TOLERANCE, isBody } from './support/bodies';
import { moveAway } from './support/freePlace';

/** Walls are looked for so far; beyond it a side is simply free. */
const LOOK_AHEAD = 10_000;

export const check: Check = {
  id: 'service-clearances',
  order: 170,
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
  for (const solid of solidsBefore(scene, side, nearest.distance)) {
    if (solid.owner === machine.machine.id || !isBody(solid) || solid.zFrom >= machine.sheet.height) continue;
    let distance = nearest.distance;
    for (const piece of solid.pieces) distance = depthBefore(piece, side.edge, side.normal, distance, DRAWING_TOLERANCE);
    if (distance < nearest.distance) nearest = { distance, name: bodyName(scene, solid), owner: solid.owner };
  }
  return nearest;
}

const solidsBefore = (scene: Scene, { edge, normal }: PlacedSide, depth: number) =>
  solidsIn(scene, boundsOf(floorBefore(edge, normal, depth)));
