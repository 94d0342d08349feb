import { areaPlace, type Check, lengthOf, type Measurement, type Source } from '../../../rules';
import type { Scene } from '../../../scene';
import { EXIT_HEIGHT } from '../../room';
import { CEILING_MILITARY } from '../formulas/cleanWare';

const LEAST = lengthOf(EXIT_HEIGHT);
const GUIDE = lengthOf(CEILING_MILITARY);

export const check: Check = {
  id: 'ceiling',
  order: 930,
  title: 'The ceiling is high enough and can be washed',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(1): 7 ft 6 in over an exit route', confidence: 'secondary' },
  why: 'Steam gathers under a low ceiling, and a rough one drips and moulds; tile with open cells soaks it up. People go out below it.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureHeight(scene), measureFinish(scene)]),
};

const MILITARY: Source = {
  kind: 'published',
  document: 'UFC 4-750-01NF (16 Apr 2004)',
  section: '6-2.3.1: 9 ft in food service, smooth, washable, non-absorbent',
  confidence: 'read',
};

function measureHeight({ room }: Scene): Measurement {
  const height = room.ceilingHeight;
  const isLow = height !== null && height < LEAST - 1e-6;
  return {
    part: 'height',
    subjects: [],
    place: areaPlace(room.outline),
    value: height,
    limit: LEAST,
    watchLimit: GUIDE,
    ...(isLow || height === null ? {} : { source: MILITARY }),
    ...(height === null ? { ask: { input: 'height of the ceiling', path: ['room', 'ceilingHeight'] } } : {}),
    say: (f) => {
      if (height === null) return 'Measure the finished ceiling above the floor and say it.';
      const is = `The ceiling is ${f.length(height)} high`;
      if (isLow) return `${is}; ${f.length(LEAST)} is needed over an exit route.`;
      return height < GUIDE - 1e-6
        ? `${is}; a guide for military kitchens has ${f.length(GUIDE)}. See that steam is drawn off.`
        : `${is}; ${f.length(LEAST)} is needed.`;
    },
  };
}

function measureFinish({ plan, room }: Scene): Measurement {
  const { ceilingWashable } = plan.finish;
  return {
    part: 'finish',
    subjects: [],
    place: areaPlace(room.outline),
    unit: 'yes-no',
    relation: 'equals',
    value: ceilingWashable,
    limit: true,
    severity: 'watch',
    source: MILITARY,
    ...(ceilingWashable === null ? { ask: { input: 'ceiling: smooth and washable or not', path: ['finish', 'ceilingWashable'] } } : {}),
    say: () => {
      if (ceilingWashable === null) return 'Say whether the ceiling is smooth, washable and takes up no water.';
      return ceilingWashable
        ? 'The ceiling is smooth and can be washed.'
        : 'The ceiling takes up steam or can’t be washed. Have it smooth, washable and non-absorbent.';
    },
  };
}
