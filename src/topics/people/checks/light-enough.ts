import type { Codes } from '../../../plan';
import {
  boundOf,
  type Check,
  createMessages,
  isUnder,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  type Source,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { LIGHT_MILITARY, LIGHT_UTENSILS, LIGHT_WASHING } from '../formulas/surroundings';

const LEAST = boundOf(LIGHT_WASHING);

const FOOD_CODE: Source = {
  kind: 'published',
  document: 'FDA Food Code',
  section: '6-303.11: 20 fc where ware is washed, 30 in above the floor',
  confidence: 'secondary',
};

export const check: Check = {
  id: 'light-enough',
  order: 780,
  title: 'There is light to see what is clean',
  group: 'people',
  unit: 'lx',
  relation: 'at-least',
  source: FOOD_CODE,
  why: 'Soil that nobody sees goes out on the clean side. The food code has 20 fc where ware is washed; a county asks for 50 fc where people work with utensils, and a guide for military kitchens has 70 to 100 fc. The plan says which counts.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureLight(scene)]),
};

/** What is said of the light. In lx. */
export interface LightEnoughMessages {
  'light-enough/unknown': NoParams;
  'light-enough/ask-light': NoParams;
  'light-enough/dark': { light: number; needed: number };
  'light-enough/below-rule': { light: number; by: By; asked: number };
  'light-enough/bright': { light: number; by: By; asked: number };
}

/** Who asks for it. */
type By = Exclude<Codes['light'], 'strictest'>;

const say = createMessages<LightEnoughMessages>();

interface Rule {
  least: number;
  by: By;
  source: Source;
}

const RULES: Readonly<Record<By, Rule>> = {
  'food-code': { least: LEAST, by: 'food-code', source: FOOD_CODE },
  local: {
    least: boundOf(LIGHT_UTENSILS),
    by: 'local',
    source: {
      kind: 'published',
      document: 'Sonoma County CA, floor plan and lighting guidelines',
      section: '50 fc where people work with utensils',
      confidence: 'read',
    },
  },
  military: {
    least: boundOf(LIGHT_MILITARY),
    by: 'military',
    source: { kind: 'published', document: 'UFC 4-750-01NF (16 Apr 2004)', section: '4-4.2: 70 to 100 fc in kitchens', confidence: 'read' },
  },
};

const STRICTEST = Object.values(RULES).reduce((most, rule) => (rule.least > most.least ? rule : most));

function measureLight({ plan, machines }: Scene): Measurement {
  const { light } = plan.finish;
  const rule = plan.codes.light === 'strictest' ? STRICTEST : RULES[plan.codes.light];
  return {
    subjects: machines.map(({ machine }) => machine.id),
    place: machinesPlace({ machines }),
    value: light,
    limit: LEAST,
    watchLimit: rule.least,
    ...(light === null || isUnder(light, LEAST) ? {} : { source: rule.source }),
    ...(light === null ? { ask: { input: say('light-enough/ask-light'), path: ['finish', 'light'] } } : {}),
    message: light === null ? say('light-enough/unknown') : sayLight(light, rule),
  };
}

function sayLight(light: number, { by, least: asked }: Rule): Message {
  if (isUnder(light, LEAST)) return say('light-enough/dark', { light, needed: LEAST });
  return say(isUnder(light, asked) ? 'light-enough/below-rule' : 'light-enough/bright', { light, by, asked });
}
