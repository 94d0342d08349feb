import { type Check, type Measurement, pointPlace, runName, type Source, segmentPlace, sentence, TOLERANCE } from '../../checks';
import { type Limit, OUTLET_INTAKE, OUTLET_OPENING, OUTLET_PROPERTY } from '../../engineering';
import { distanceToSegment, type Point3 } from '../../geometry';
import { pathOf } from '../../plan';
import type { PlacedOpening, PlacedRun, Scene } from '../../scene';
import type { Formatter } from '../../units';

const source: Source = {
  kind: 'published',
  document: 'International Mechanical Code',
  section: '506.4.2, ends of Type II exhaust: 3 ft from openings, 10 ft from property lines and intakes',
  confidence: 'secondary',
};

export const check: Check = {
  id: 'outlet-distances',
  title: 'The outlet is far from openings, intakes and neighbours',
  group: 'air',
  unit: 'mm',
  relation: 'at-least',
  source,
  why: 'Vapour that is blown out beside a window or an intake comes in again. How high the outlet stands above ground and roof, and that it blows on no walkway, is for the local code as well.',
  measure: (scene) => scene.runs.flatMap((run) => measureRun(scene, run)),
};

const MM = 1000;

function measureRun(scene: Scene, run: PlacedRun): Measurement[] {
  const end = run.points.at(-1);
  if (end === undefined) return [];
  return [
    ...measureOpening(scene, run, end),
    measureStated(scene, run, end, { part: 'line', field: 'lineDistance', what: 'property line', limit: OUTLET_PROPERTY }),
    measureStated(scene, run, end, { part: 'intake', field: 'intakeDistance', what: 'air intake', limit: OUTLET_INTAKE }),
  ];
}

/** Openings that can lead outdoors; a pass window or a cased opening leads into another room. */
const LEADS_OUT: readonly PlacedOpening['opening']['kind'][] = ['door', 'double-door', 'window'];

/** The nearest door or window, whichever way it looks: that it leads indoors is for the reader to say. */
function measureOpening(scene: Scene, run: PlacedRun, end: Point3): Measurement[] {
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
      subjects: [run.run.id, run.run.machine],
      place: segmentPlace(nearest.opening.segment),
      value: nearest.away,
      limit,
      say: (f) => sentence(sayDistance(`the outlet of ${runName(scene, run)}`, `a ${kind}`, nearest.away, limit, f)),
    },
  ];
}

function distanceToOpening(point: Point3, { opening, segment }: PlacedOpening): number {
  const above = Math.max(0, opening.sill - point.z, point.z - opening.sill - opening.height);
  return Math.hypot(distanceToSegment(point, segment), above);
}

interface Stated {
  part: string;
  field: 'lineDistance' | 'intakeDistance';
  what: string;
  limit: Limit;
}

function measureStated(scene: Scene, { run, ...placed }: PlacedRun, end: Point3, { part, field, what, limit }: Stated): Measurement {
  const value = run.duct[field];
  const least = (limit.min ?? 0) * MM;
  const outlet = `the outlet of ${runName(scene, { run, ...placed })}`;
  const common = { part, subjects: [run.id, run.machine], place: pointPlace(end), value, limit: least };
  if (value === null) {
    const ask = { input: `distance from the outlet to the nearest ${what}`, path: pathOf(scene.plan, 'runs', run.id, 'duct', field) };
    return { ...common, ask, say: (f) => `How far is ${outlet} from the nearest ${what}? At least ${f.length(least)} is asked.` };
  }
  return { ...common, say: (f) => sentence(sayDistance(outlet, `the nearest ${what}`, value, least, f)) };
}

function sayDistance(outlet: string, what: string, away: number, least: number, f: Formatter): string {
  if (away >= least - TOLERANCE) return `${outlet} is ${f.length(away)} from ${what}; ${f.length(least)} is the least.`;
  return `${outlet} is ${f.length(away)} from ${what}, ${f.length(least - away)} less than the ${f.length(least)} that are asked. Let it end farther off.`;
}
