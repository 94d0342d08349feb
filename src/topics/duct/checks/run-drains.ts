import { distance, type Point3 } from '../../../geometry';
import { pathOf, type Run } from '../../../plan';
import {
  type Check,
  createMessages,
  editRun,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameRun,
  pointPlace,
  type Repair,
  type Source,
  segmentPlace,
  wayPlace,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { DUCT_SLOPE } from '../formulas/ductLimits';
import { listLegs, listSags, type RunLeg } from './support/runFall';

const LEAST_FALL = DUCT_SLOPE.min ?? 0;
/** A leg drawn at the fall itself holds it, whatever its length. */
const DUST = 1e-6;

export const check: Check = {
  id: 'run-drains',
  order: 520,
  title: 'The water in the run finds its way out',
  group: 'air',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'UFC 3-410-01FA (15 May 2003) and UFC 4-722-01 (27 Jan 2003), superseded',
    section: '4-10.3 and 4-6.3.1: the duct is pitched and sealed, with a drain line from its low point',
    confidence: 'read',
  },
  why: 'Vapour turns to water in the duct. It runs back to the collar or out at the end; where the duct sags it stands, rots its seams and chokes the air.',
  measure: (scene) => scene.runs.flatMap((run) => [measureSags(scene, run), ...measureFall(scene, run)]),
};

/** Heights above the floor in mm; slopes as height over length. */
export interface RunDrainsMessages {
  'run-drains/sags-nowhere': { run: Name };
  'run-drains/ask-drain': NoParams;
  'run-drains/drain-unknown': { run: Name; height: number };
  'run-drains/drained': { run: Name; height: number };
  'run-drains/not-drained': { run: Name; height: number };
  'run-drains/repair-add-low-point-drain': NoParams;
  'run-drains/falls': { run: Name; slope: number; least: number };
  'run-drains/level': { run: Name; least: number };
  'run-drains/flat': { run: Name; slope: number; least: number };
  'run-drains/repair-pitch-run': { slope: number };
}

const say = createMessages<RunDrainsMessages>();

/** A place where the run sags needs a drain of its own. */
function measureSags(scene: Scene, placed: PlacedRun): Measurement {
  const { run, points } = placed;
  const name = nameRun(scene, placed);
  const [sag] = listSags(points);
  const drain = run.duct.lowPointDrain;
  const common = { part: 'low-point', subjects: [run.id, run.machine], limit: true, source: DRIPS };
  if (sag === undefined) {
    const message = say('run-drains/sags-nowhere', { run: name });
    return { place: wayPlace(points, run.diameter), value: true, message, ...common };
  }
  const at = { place: pointPlace(sag), value: drain, ...common };
  if (drain === null) {
    const ask = { input: say('run-drains/ask-drain'), path: pathOf(scene.plan, 'runs', run.id, 'duct', 'lowPointDrain') };
    return { ask, message: say('run-drains/drain-unknown', { run: name, height: sag.z }), ...at };
  }
  const message = say(drain ? 'run-drains/drained' : 'run-drains/not-drained', { run: name, height: sag.z });
  if (drain) return { message, ...at };
  return { message, repairs: { ids: ['add-low-point-drain'], find: () => [addDrain(placed)] }, ...at };
}

/** In force, where the military criteria that ask for the drain are superseded. */
const DRIPS: Source = {
  kind: 'published',
  document: 'FDA Food Code 4-204.11, as Minnesota Rules 4626.0565 (2019)',
  section:
    'hoods, fans and ducts where ware is washed let no condensate drip on food, equipment and utensils; a drain line at the low point: UFC 3-410-01FA (2003), 4-10.3',
  confidence: 'read',
};

const addDrain = ({ run }: PlacedRun): Repair => ({
  id: 'add-low-point-drain',
  label: say('run-drains/repair-add-low-point-drain'),
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.lowPointDrain = true;
    }),
});

/** The flattest leg. How much fall is from memory, so that is only a watch. */
function measureFall(scene: Scene, placed: PlacedRun): Measurement[] {
  const legs = listLegs(placed.points);
  const flattest = legs.reduce<RunLeg | null>((least, leg) => (least === null || leg.slope < least.slope ? leg : least), null);
  if (flattest === null) return [];
  const { run } = placed;
  const falls = flattest.slope >= LEAST_FALL - DUST;
  return [
    {
      part: 'fall',
      subjects: [run.id, run.machine],
      place: segmentPlace({ a: flattest.from, b: flattest.to }),
      value: flattest.slope,
      limit: LEAST_FALL,
      unit: 'ratio',
      relation: 'at-least',
      severity: 'watch',
      source: {
        kind: 'published',
        document: 'Usual detail of a moist duct',
        section: '¼ in to a foot toward its drain or hood',
        confidence: 'memory',
      },
      message: sayFall(nameRun(scene, placed), flattest.slope, falls),
      ...(falls ? {} : { repairs: { ids: ['pitch-run'], find: () => [pitchRun(placed)] } }),
    },
  ];
}

function sayFall(run: Name, slope: number, falls: boolean): Message {
  if (falls) return say('run-drains/falls', { run, slope, least: LEAST_FALL });
  if (Math.abs(slope) < DUST) return say('run-drains/level', { run, least: LEAST_FALL });
  return say('run-drains/flat', { run, slope, least: LEAST_FALL });
}

/** Lets each flat leg rise away from the collar; what comes after goes up with it. */
const pitchRun = ({ run, points }: PlacedRun): Repair => ({
  id: 'pitch-run',
  label: say('run-drains/repair-pitch-run', { slope: LEAST_FALL }),
  edit: (draft) =>
    editRun(draft, run.id, (item) => {
      raiseLegs(item, points[0]);
    }),
});

function raiseLegs(run: Run, start: Point3 | undefined): void {
  let [before, lifted] = [start, 0];
  for (const point of run.points) {
    const drawn = { ...point };
    if (before !== undefined) {
      const along = distance(before, drawn);
      const rise = drawn.z - before.z;
      if (along > 1e-3 && Math.abs(rise) < along * LEAST_FALL) lifted += along * LEAST_FALL - rise;
    }
    point.z = drawn.z + lifted;
    before = drawn;
  }
}
