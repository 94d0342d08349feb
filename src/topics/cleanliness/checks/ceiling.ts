import {
  areaPlace,
  type Check,
  createMessages,
  lengthOf,
  type Measurement,
  type Message,
  type NoParams,
  type Source,
} from '../../../rules';
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

/** What is said of the ceiling. Heights in mm. */
export interface CeilingMessages {
  'ceiling/height-unknown': NoParams;
  'ceiling/ask-height': NoParams;
  'ceiling/too-low': { height: number; least: number };
  /** High enough to go out below it, lower than a guide has it. */
  'ceiling/below-guide': { height: number; guide: number };
  'ceiling/high-enough': { height: number; least: number };
  'ceiling/finish-unknown': NoParams;
  'ceiling/ask-finish': NoParams;
  'ceiling/washable': NoParams;
  'ceiling/not-washable': NoParams;
}

const say = createMessages<CeilingMessages>();

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
    ...(height === null ? { ask: { input: say('ceiling/ask-height'), path: ['room', 'ceilingHeight'] } } : {}),
    message: sayHeight(height),
  };
}

function sayHeight(height: number | null): Message {
  if (height === null) return say('ceiling/height-unknown');
  if (height < LEAST - 1e-6) return say('ceiling/too-low', { height, least: LEAST });
  return height < GUIDE - 1e-6
    ? say('ceiling/below-guide', { height, guide: GUIDE })
    : say('ceiling/high-enough', { height, least: LEAST });
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
    ...(ceilingWashable === null ? { ask: { input: say('ceiling/ask-finish'), path: ['finish', 'ceilingWashable'] } } : {}),
    message: ceilingWashable === null ? say('ceiling/finish-unknown') : say(ceilingWashable ? 'ceiling/washable' : 'ceiling/not-washable'),
  };
}
