import type { Side } from '../../../catalog';
import { boundsOf, depthBefore, floorBefore, scale } from '../../../geometry';
import { areaPlace, type Check, createMessages, type Measurement, type Name, nameBody, nameMachine } from '../../../rules';
import { type PlacedMachine, type PlacedSide, type Scene, solidsIn } from '../../../scene';
import { DRAWING_TOLERANCE, isBody } from './support/bodies';
import { offerMove } from './support/freePlace';

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

/** What is said of a side that service needs. Lengths in mm. */
export interface ServiceClearancesMessages {
  'service-clearances/free': Zone;
  'service-clearances/taken': Zone & { by: Name; missing: number };
}

interface Zone {
  machine: Name;
  side: Side;
  free: number;
  needed: number;
}

const say = createMessages<ServiceClearancesMessages>();

/** What stands nearest before a side. */
interface Nearest {
  distance: number;
  name: Name;
  owner: string | null;
}

function measureZone(scene: Scene, machine: PlacedMachine, { side, depth, polygon }: PlacedMachine['serviceZones'][number]): Measurement {
  const placed = machine.sides[side];
  const nearest = findNearest(scene, machine, placed);
  const zone: Zone = { machine: nameMachine(scene, machine), side, free: nearest.distance, needed: depth };
  const missing = depth - nearest.distance;
  const isFree = missing <= 1e-6;
  return {
    part: side,
    subjects: [machine.machine.id, ...(!isFree && nearest.owner !== null ? [nearest.owner] : [])],
    place: areaPlace(polygon),
    value: nearest.distance,
    limit: depth,
    message: isFree ? say('service-clearances/free', zone) : say('service-clearances/taken', { ...zone, by: nearest.name, missing }),
    ...(isFree || nearest.owner === null ? {} : { repairs: offerMove(scene, nearest.owner, [scale(placed.normal, missing)]) }),
  };
}

function findNearest(scene: Scene, machine: PlacedMachine, side: PlacedSide): Nearest {
  let nearest: Nearest = { distance: Math.max(0, side.wallDistance ?? LOOK_AHEAD), name: { kind: 'wall' }, owner: null };
  for (const solid of solidsBefore(scene, side, nearest.distance)) {
    if (solid.owner === machine.machine.id || !isBody(solid) || solid.zFrom >= machine.sheet.height) continue;
    let distance = nearest.distance;
    for (const piece of solid.pieces) distance = depthBefore(piece, side.edge, side.normal, distance, DRAWING_TOLERANCE);
    if (distance < nearest.distance) nearest = { distance, name: nameBody(scene, solid), owner: solid.owner };
  }
  return nearest;
}

const solidsBefore = (scene: Scene, { edge, normal }: PlacedSide, depth: number) =>
  solidsIn(scene, boundsOf(floorBefore(edge, normal, depth)));
