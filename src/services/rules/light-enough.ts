import { type Check, type Measurement, machinesPlace } from '../../checks';
import { LIGHT_UTENSILS, LIGHT_WASHING } from '../../engineering';
import type { Scene } from '../../scene';
import { boundOf } from '../support/limitOf';

const LEAST = boundOf(LIGHT_WASHING);
const LOCAL = boundOf(LIGHT_UTENSILS);

export const check: Check = {
  id: 'light-enough',
  title: 'There is light to see what is clean',
  group: 'people',
  unit: 'lx',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '6-303.11: 20 fc where ware is washed, 30 in above the floor',
    confidence: 'secondary',
  },
  why: 'Soil that nobody sees goes out on the clean side. Some counties ask for 50 fc where people work with utensils.',
  measure: (scene) => (scene.appliances.length === 0 ? [] : [measureLight(scene)]),
};

function measureLight({ plan, appliances }: Scene): Measurement {
  const { light } = plan.finish;
  return {
    subjects: appliances.map(({ machine }) => machine.id),
    place: machinesPlace({ appliances }),
    value: light,
    limit: LEAST,
    ...(light === null ? { ask: { input: 'light at the machine', path: ['finish', 'light'] } } : {}),
    say: (f) => {
      if (light === null) return 'Measure the light at the machine, 30 in above the floor, and say it.';
      if (light < LEAST * (1 - 1e-9))
        return `The light at the machine is ${f.illuminance(light)}; ${f.illuminance(LEAST)} is needed. Add a lamp that stands steam.`;
      const local = light < LOCAL * (1 - 1e-9) ? ` Some counties ask for ${f.illuminance(LOCAL)}.` : '';
      return `The light at the machine is ${f.illuminance(light)}; ${f.illuminance(LEAST)} is needed.${local}`;
    },
  };
}
