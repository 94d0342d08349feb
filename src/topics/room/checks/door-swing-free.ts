import { clipConvex, type Polygon, penetration } from '../../../geometry';
import { areaPlace, type Check, createMessages, type Measurement, type Name, type NoParams, nameBody } from '../../../rules';
import type { PlacedOpening, Scene, Solid } from '../../../scene';
import { DRAWING_TOLERANCE, isBody, isOver, listExits } from './support/bodies';
import { offerMove } from './support/freePlace';

export const check: Check = {
  id: 'door-swing-free',
  order: 180,
  title: 'Doors of the room swing free',
  group: 'room',
  unit: 'mm',
  relation: 'at-most',
  source: { kind: 'geometry', text: 'The leaf of a door needs the floor that it sweeps. 1 mm is left to drawing.' },
  why: 'A leaf that meets a table or a cart opens only in part: carts do not pass, and in a fire people do not.',
  measure: (scene) => scene.room.openings.filter(({ sweep }) => sweep.length > 0).map((opening) => measureOpening(scene, opening)),
};

/** What is said of the swing of a door. Lengths in mm. */
export interface DoorSwingFreeMessages {
  'door-swing-free/free': NoParams;
  'door-swing-free/in-swing': { body: Name; depth: number };
}

const say = createMessages<DoorSwingFreeMessages>();

/** How deep a body stands in the floor that a leaf sweeps. */
interface Hit {
  solid: Solid;
  depth: number;
  pieces: readonly [Polygon, Polygon];
}

function measureOpening(scene: Scene, opening: PlacedOpening): Measurement {
  const hit = findDeepest(scene, opening);
  return {
    subjects: [opening.opening.id, ...(hit === null ? [] : [hit.solid.owner])],
    place: areaPlace(...(hit === null ? opening.sweep : [clipConvex(...hit.pieces)])),
    value: hit?.depth ?? 0,
    limit: DRAWING_TOLERANCE,
    message:
      hit === null ? say('door-swing-free/free') : say('door-swing-free/in-swing', { body: nameBody(scene, hit.solid), depth: hit.depth }),
    ...(hit === null ? {} : { repairs: offerMove(scene, hit.solid.owner, listExits(hit.pieces)) }),
  };
}

function findDeepest(scene: Scene, { opening, sweep }: PlacedOpening): Hit | null {
  const [low, high] = [opening.sill, opening.sill + opening.height];
  let worst: Hit | null = null;
  for (const solid of scene.solids) {
    if (!isBody(solid) || solid.zFrom >= high || solid.zTo <= low) continue;
    for (const piece of solid.pieces) {
      for (const fan of sweep) {
        const depth = penetration(fan, piece);
        if (!isOver(depth) || depth <= (worst?.depth ?? 0)) continue;
        worst = { solid, depth, pieces: [fan, piece] };
      }
    }
  }
  return worst;
}
