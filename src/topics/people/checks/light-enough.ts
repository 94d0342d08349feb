import type { Codes } from '../../../plan';
import { boundOf, type Check, isUnder, type Measurement, machinesPlace, type Source } from '../../../rules';
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

interface Rule {
  least: number;
  /** Who asks for it: `the food code asks`. */
  by: string;
  source: Source;
}

const RULES: Readonly<Record<Exclude<Codes['light'], 'strictest'>, Rule>> = {
  'food-code': { least: LEAST, by: 'the food code asks', source: FOOD_CODE },
  local: {
    least: boundOf(LIGHT_UTENSILS),
    by: 'some counties ask',
    source: {
      kind: 'published',
      document: 'Sonoma County CA, floor plan and lighting guidelines',
      section: '50 fc where people work with utensils',
      confidence: 'read',
    },
  },
  military: {
    least: boundOf(LIGHT_MILITARY),
    by: 'the guide for military kitchens asks',
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
    ...(light === null ? { ask: { input: 'light at the machine', path: ['finish', 'light'] } } : {}),
    say: (f) => {
      if (light === null) return 'Measure the light at the machine, 30 in above the floor, and say it.';
      const is = `The light at the machine is ${f.illuminance(light)}`;
      if (isUnder(light, LEAST)) return `${is}; ${f.illuminance(LEAST)} is needed. Add a lamp that stands steam.`;
      const asked = `${is}; ${rule.by} for ${f.illuminance(rule.least)}.`;
      return isUnder(light, rule.least) ? `${asked} Add a lamp that stands steam.` : asked;
    },
  };
}
