import {
  areaPlace,
  boundOf,
  type Check,
  createMessages,
  type Measurement,
  type Message,
  type NoParams,
  pointPlace,
  type Source,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { FLOOR_FALL, FLOOR_FALL_COUNTY, STANDING_SLOPE } from '../formulas/cleanlinessLimits';

const LEAST = boundOf(FLOOR_FALL);
const COUNTY = boundOf(FLOOR_FALL_COUNTY);
const MOST = boundOf(STANDING_SLOPE);

export const check: Check = {
  id: 'floor-drains',
  order: 920,
  title: 'The floor drains and can be washed',
  group: 'sanitary',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '6-201.13: where floors are flushed with water they are coved, sealed, graded to drain, and have drains',
    confidence: 'secondary',
  },
  why: 'A dish room’s floor is wet every day. Water that stands is slippery and breeds; water that runs under the wall rots it. Where a floor is never flushed, a joint of at most 1/32 in takes the place of the seal; a dish room’s is flushed. One county has the cove 4 in high with a radius of ⅜ in, and the coved floor end no nearer than 36 in beyond the bussing station. Where work is wet, 29 CFR 1910.22(a)(2) wants drainage and dry places to stand: false floors, platforms or mats.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureCove(scene), measureDrain(scene), ...measureFall(scene)]),
};

/** What is said of the floor. Slopes as height per length. */
export interface FloorDrainsMessages {
  'floor-drains/cove-unknown': NoParams;
  'floor-drains/ask-cove': NoParams;
  'floor-drains/coved': NoParams;
  'floor-drains/not-coved': NoParams;
  'floor-drains/drained': NoParams;
  'floor-drains/no-drain': NoParams;
  'floor-drains/fall-unknown': NoParams;
  'floor-drains/ask-fall': NoParams;
  'floor-drains/level': NoParams;
  'floor-drains/falls': { slope: number };
  'floor-drains/less-than-usual': { slope: number; usual: number };
  'floor-drains/less-than-some-ask': { slope: number; asked: number };
  'floor-drains/flat-enough': { slope: number; most: number };
  'floor-drains/too-steep': { slope: number; most: number };
}

const say = createMessages<FloorDrainsMessages>();

const whole = ({ room }: Scene) => ({ subjects: [], place: areaPlace(room.outline) });

function measureCove(scene: Scene): Measurement {
  const { floorCoved } = scene.plan.finish;
  return {
    part: 'cove',
    ...whole(scene),
    value: floorCoved,
    limit: true,
    ...(floorCoved === null ? { ask: { input: say('floor-drains/ask-cove'), path: ['finish', 'floorCoved'] } } : {}),
    message: floorCoved === null ? say('floor-drains/cove-unknown') : say(floorCoved ? 'floor-drains/coved' : 'floor-drains/not-coved'),
  };
}

function measureDrain(scene: Scene): Measurement {
  const { floorDrains } = scene.room;
  return {
    part: 'drain',
    subjects: floorDrains.map(({ drain }) => drain.id),
    place: floorDrains[0] === undefined ? areaPlace(scene.room.outline) : pointPlace(floorDrains[0].centre),
    value: floorDrains.length > 0,
    limit: true,
    message: say(floorDrains.length > 0 ? 'floor-drains/drained' : 'floor-drains/no-drain'),
  };
}

const CONVENTION: Source = { kind: 'common-practice', text: 'Floors fall ⅛ to ¼ in a foot to their drain.' };
const BY_COUNTY: Source = {
  kind: 'published',
  document: 'Marin County CA, General Construction and Equipment Requirements',
  section: 'floors fall 1 in 50 to their drain',
  confidence: 'read',
};
const ACCESS: Source = {
  kind: 'published',
  document: 'ADA Standards',
  section: '403.3 and 305.3, US Access Board guide: 1 in 48 across a way and where people stand',
  confidence: 'read',
};

/** A floor without any fall is not graded; less than is usual, or more than is safe to stand on, is looked at. */
function measureFall(scene: Scene): Measurement[] {
  const { floorSlope } = scene.plan.finish;
  const fall: Measurement = {
    part: 'fall',
    ...whole(scene),
    unit: 'ratio',
    relation: 'at-least',
    value: floorSlope,
    limit: LEAST,
    watchLimit: COUNTY,
    ...fallSource(floorSlope),
    ...(floorSlope === null ? { ask: { input: say('floor-drains/ask-fall'), path: ['finish', 'floorSlope'] } } : {}),
    message: sayFall(floorSlope),
  };
  return floorSlope === null ? [fall] : [fall, measureSteep(scene, floorSlope)];
}

function sayFall(slope: number | null): Message {
  if (slope === null) return say('floor-drains/fall-unknown');
  if (slope === 0) return say('floor-drains/level');
  if (slope < LEAST - 1e-9) return say('floor-drains/less-than-usual', { slope, usual: LEAST });
  return slope < COUNTY - 1e-9 ? say('floor-drains/less-than-some-ask', { slope, asked: COUNTY }) : say('floor-drains/falls', { slope });
}

function measureSteep(scene: Scene, slope: number): Measurement {
  return {
    part: 'steep',
    ...whole(scene),
    unit: 'ratio',
    relation: 'at-most',
    value: slope,
    limit: MOST,
    severity: 'watch',
    source: ACCESS,
    message: say(slope <= MOST + 1e-9 ? 'floor-drains/flat-enough' : 'floor-drains/too-steep', { slope, most: MOST }),
  };
}

/** A level floor breaks the code; a small fall is short of the trade's habit alone. */
function fallSource(slope: number | null): Pick<Measurement, 'source' | 'severity'> {
  if (slope === null || slope === 0) return {};
  return slope < LEAST - 1e-9 ? { source: CONVENTION, severity: 'watch' } : { source: BY_COUNTY };
}
