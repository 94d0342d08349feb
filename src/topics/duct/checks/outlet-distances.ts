import { containsPoint, distanceToOutline, distanceToSegment, type Point3 } from '../../../geometry';
import { pathOf, type Run } from '../../../plan';
import {
  type Check,
  createMessages,
  type Limit,
  type Measurement,
  type Message,
  type Name,
  nameRun,
  pointPlace,
  type Source,
  segmentPlace,
  TOLERANCE,
} from '../../../rules';
import type { PlacedOpening, PlacedRun, Scene } from '../../../scene';
import { OUTLET_GRADE, OUTLET_INTAKE, OUTLET_OPENING, OUTLET_PROPERTY, OUTLET_ROOF, OUTLET_WALL } from '../formulas/ductLimits';

const source: Source = {
  kind: 'published',
  document: 'International Mechanical Code',
  section:
    '506.4.2, ends of Type II exhaust: 3 ft from openings, 10 ft from property lines, other buildings on the lot and intakes, 30 in from outer walls, 10 ft above ground, 30 in above the roof',
  confidence: 'secondary',
};

export const check: Check = {
  id: 'outlet-distances',
  order: 530,
  title: 'The outlet is far from walls, openings, intakes and neighbours',
  group: 'air',
  unit: 'mm',
  relation: 'at-least',
  source,
  why: 'Vapour that is blown out beside a window or an intake comes in again, and beside a wall it wets the wall. The distance from the wall is that from the room’s side of it: the wall is thicker than nothing, so it is the most that it can be. That the outlet blows on no walkway and is sheltered from the weather is for the reader to see.',
  measure: (scene) => scene.runs.flatMap((placed) => measureRun(scene, placed)),
};

/** Distances in mm. */
export interface OutletDistancesMessages {
  'outlet-distances/far': { run: Name; from: Whence; away: number; least: number };
  'outlet-distances/near': { run: Name; from: Whence; away: number; least: number };
  'outlet-distances/ask-distance': { from: Whence };
  'outlet-distances/unknown': { run: Name; from: Whence; least: number };
}

/** What an outlet is held away from; `line`: a property line or another building on the lot. */
type Whence = 'wall' | 'door' | 'window' | Stated['part'];

const say = createMessages<OutletDistancesMessages>();

const MM = 1000;

/** Where a run ends. */
interface Outlet {
  run: Run;
  end: Point3;
}

function measureRun(scene: Scene, { run, points }: PlacedRun): Measurement[] {
  const end = points.at(-1);
  if (end === undefined) return [];
  const outlet: Outlet = { run, end };
  return [
    ...measureOpening(scene, outlet),
    ...measureWall(scene, outlet),
    measureStated(scene, outlet, { part: 'line', field: 'lineDistance', limit: OUTLET_PROPERTY }),
    measureStated(scene, outlet, { part: 'intake', field: 'intakeDistance', limit: OUTLET_INTAKE }),
    measureStated(scene, outlet, outlet.run.outlet === 'wall' ? ABOVE_GROUND : ABOVE_ROOF),
  ];
}

/** Of an outlet through the wall, out of the room: how far it stands before it, with the thickness of the wall in it. */
function measureWall(scene: Scene, outlet: Outlet): Measurement[] {
  const { run, end } = outlet;
  if (run.outlet !== 'wall' || containsPoint(scene.room.outline, end)) return [];
  const value = distanceToOutline(scene.room.outline, end);
  const limit = (OUTLET_WALL.min ?? 0) * MM;
  return [
    {
      part: 'wall',
      subjects: [run.id, run.machine],
      place: pointPlace(end),
      value,
      limit,
      message: sayDistance(nameRun(scene, outlet), 'wall', value, limit),
    },
  ];
}

/** Openings that can lead outdoors; a pass window or a cased opening leads into another room. */
const LEADS_OUT: readonly PlacedOpening['opening']['kind'][] = ['door', 'double-door', 'window'];

/** The nearest door or window, whichever way it looks: that it leads indoors is for the reader to say. */
function measureOpening(scene: Scene, outlet: Outlet): Measurement[] {
  const { run, end } = outlet;
  const openings = scene.room.openings.filter(({ opening }) => LEADS_OUT.includes(opening.kind));
  const distances = openings.map((opening) => ({ opening, away: distanceToOpening(end, opening) }));
  const [first, ...others] = distances;
  if (first === undefined) return [];
  const nearest = others.reduce((near, item) => (item.away < near.away - TOLERANCE ? item : near), first);
  const limit = (OUTLET_OPENING.min ?? 0) * MM;
  const kind = nearest.opening.opening.kind === 'window' ? 'window' : 'door';
  return [
    {
      part: 'opening',
      subjects: [run.id, run.machine],
      place: segmentPlace(nearest.opening.segment),
      value: nearest.away,
      limit,
      message: sayDistance(nameRun(scene, outlet), kind, nearest.away, limit),
    },
  ];
}

function distanceToOpening(point: Point3, { opening, segment }: PlacedOpening): number {
  const above = Math.max(0, opening.sill - point.z, point.z - opening.sill - opening.height);
  return Math.hypot(distanceToSegment(point, segment), above);
}

interface Stated {
  part: 'line' | 'intake' | 'ground' | 'roof';
  field: 'lineDistance' | 'intakeDistance' | 'aboveGround' | 'aboveRoof';
  limit: Limit;
}

const ABOVE_GROUND: Stated = { part: 'ground', field: 'aboveGround', limit: OUTLET_GRADE };
const ABOVE_ROOF: Stated = { part: 'roof', field: 'aboveRoof', limit: OUTLET_ROOF };

function measureStated(scene: Scene, { run, end }: Outlet, { part, field, limit }: Stated): Measurement {
  const value = run.duct[field];
  const least = (limit.min ?? 0) * MM;
  const name = nameRun(scene, { run });
  const common = { part, subjects: [run.id, run.machine], place: pointPlace(end), value, limit: least };
  if (value === null) {
    const input = say('outlet-distances/ask-distance', { from: part });
    const ask = { input, path: pathOf(scene.plan, 'runs', run.id, 'duct', field) };
    return { ask, message: say('outlet-distances/unknown', { run: name, from: part, least }), ...common };
  }
  return { message: sayDistance(name, part, value, least), ...common };
}

const sayDistance = (run: Name, from: Whence, away: number, least: number): Message =>
  say(away >= least - TOLERANCE ? 'outlet-distances/far' : 'outlet-distances/near', { run, from, away, least });
