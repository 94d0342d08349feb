import { areaPlace, boundOf, type Check, type Measurement, pointPlace, type Source } from '../../../rules';
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

const whole = ({ room }: Scene) => ({ subjects: [], place: areaPlace(room.outline) });

function measureCove(scene: Scene): Measurement {
  const { floorCoved } = scene.plan.finish;
  return {
    part: 'cove',
    ...whole(scene),
    value: floorCoved,
    limit: true,
    ...(floorCoved === null ? { ask: { input: 'floor: coved and sealed or not', path: ['finish', 'floorCoved'] } } : {}),
    say: () => {
      if (floorCoved === null) return 'Say whether the floor is coved up the wall and sealed.';
      return floorCoved
        ? 'The floor is coved up the wall and sealed.'
        : 'The floor is not coved and sealed at the wall. Have it coved: water goes into the joint.';
    },
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
    say: () =>
      floorDrains.length > 0 ? 'The floor has a drain to fall to.' : 'The floor has no drain. Draw the one it falls to, or have one built.',
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
    ...(floorSlope === null ? { ask: { input: 'fall of the floor', path: ['finish', 'floorSlope'] } } : {}),
    say: (f) => {
      if (floorSlope === null) return 'Say how much the floor falls to its drain.';
      if (floorSlope === 0) return 'The floor is level: it must be graded to its drain.';
      const falls = `The floor falls ${f.slope(floorSlope)} to its drain`;
      if (floorSlope < LEAST - 1e-9) return `${falls}; ${f.slope(LEAST)} is the least that is usual.`;
      return floorSlope < COUNTY - 1e-9 ? `${falls}; some counties ask for ${f.slope(COUNTY)}.` : `${falls}.`;
    },
  };
  const steep: Measurement = {
    part: 'steep',
    ...whole(scene),
    unit: 'ratio',
    relation: 'at-most',
    value: floorSlope,
    limit: MOST,
    severity: 'watch',
    source: ACCESS,
    say: (f) =>
      (floorSlope ?? 0) <= MOST + 1e-9
        ? `The floor falls ${f.slope(floorSlope ?? 0)}; up to ${f.slope(MOST)} a wheelchair and a cart stand still.`
        : `The floor falls ${f.slope(floorSlope ?? 0)}; above ${f.slope(MOST)} a wheelchair or a cart rolls off. Let it fall less.`,
  };
  return floorSlope === null ? [fall] : [fall, steep];
}

/** A level floor breaks the code; a small fall is short of the trade's habit alone. */
function fallSource(slope: number | null): Pick<Measurement, 'source' | 'severity'> {
  if (slope === null || slope === 0) return {};
  return slope < LEAST - 1e-9 ? { source: CONVENTION, severity: 'watch' } : { source: BY_COUNTY };
}
