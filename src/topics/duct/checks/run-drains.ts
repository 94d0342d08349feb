import { distance, type Point3 } from '../../../geometry';
import { pathOf, type Run } from '../../../plan';
import {
  type Check,
  editRun,
  type Measurement,
  pointPlace,
  type Repair,
  runName,
  type Source,
  segmentPlace,
  sentence,
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

/** A place where the run sags needs a drain of its own. */
function measureSags(scene: Scene, placed: PlacedRun): Measurement {
  const { run, points } = placed;
  const name = runName(scene, placed);
  const [sag] = listSags(points);
  const drain = run.duct.lowPointDrain;
  const common = { part: 'low-point', subjects: [run.id, run.machine], limit: true, source: DRIPS };
  if (sag === undefined) {
    const say = () => sentence(`${name} sags nowhere: its water runs to its ends.`);
    return { place: wayPlace(points, run.diameter), value: true, say, ...common };
  }
  const at = { place: pointPlace(sag), value: drain, ...common };
  if (drain === null) {
    const ask = { input: 'drain at the low point of the run', path: pathOf(scene.plan, 'runs', run.id, 'duct', 'lowPointDrain') };
    return { ask, say: (f) => sentence(`${name} sags at ${f.length(sag.z)} above the floor. Has it a drain there?`), ...at };
  }
  const say: Measurement['say'] = (f) =>
    sentence(
      drain
        ? `${name} sags at ${f.length(sag.z)} above the floor and has a drain there.`
        : `${name} sags at ${f.length(sag.z)} above the floor and has no drain there: water stands in it. Give it a drain line at its low point, or let it rise all the way.`,
    );
  return { say, repairs: () => (drain ? [] : [addDrain(placed)]), ...at };
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
  label: () => 'Call for a drain line at the low point',
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
  const name = runName(scene, placed);
  const falls = flattest.slope >= LEAST_FALL - DUST;
  const slope = Math.abs(flattest.slope) < DUST ? 'lies level' : 'falls only';
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
      say: (f) => {
        if (falls) return sentence(`${name} falls nowhere less than ${f.slope(flattest.slope)}; ${f.slope(LEAST_FALL)} is usual.`);
        const how = slope === 'lies level' ? slope : `${slope} ${f.slope(flattest.slope)}`;
        return sentence(`a leg of ${name} ${how}; ${f.slope(LEAST_FALL)} lets its water run. Let it rise from the collar on.`);
      },
      repairs: () => (falls ? [] : [pitchRun(placed)]),
    },
  ];
}

/** Lets each flat leg rise away from the collar; what comes after goes up with it. */
const pitchRun = ({ run, points }: PlacedRun): Repair => ({
  id: 'pitch-run',
  label: (f) => `Let its flat legs rise ${f.slope(LEAST_FALL)} from the collar on`,
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
