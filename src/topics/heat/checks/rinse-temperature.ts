import {
  type Bound,
  type Check,
  governing,
  isOver,
  isUnder,
  type Measurement,
  machineName,
  machinePlace,
  printedLeast,
  printedMost,
  type Source,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { manifoldLimit } from '../formulas/temperatures';
import { classOf } from './support/machineClass';

const SOURCE: Source = {
  kind: 'published',
  document: 'FDA Food Code',
  section: '4-501.112, as WAC 246-215-04555: 165 °F single temperature, 180 °F all others, 194 °F at most',
  confidence: 'read',
};

export const check: Check = {
  id: 'rinse-temperature',
  order: 350,
  title: 'Temperature of the final rinse',
  group: 'heat',
  unit: 'C',
  relation: 'at-least',
  source: SOURCE,
  why: 'Below, the rinse does not sanitise; above 194 °F it turns to steam before it reaches the plates. Rinse water scalds at once: let the machine end its cycle before opening it.',
  measure: (scene) =>
    scene.machines.filter(({ sheet }) => sheet.sanitizing === 'hot-water').flatMap((placed) => measureMachine(scene, placed)),
};

/** What the data sheet states as its least at the manifold. Chemicals sanitise at lower temperatures. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { machine, sheet } = placed;
  const { units } = scene.plan.settings;
  const { min, max } = manifoldLimit(classOf(placed));
  const bounds: Bound[] = [
    { value: printedLeast(min ?? Number.NaN, units), relation: 'at-least', by: 'the food code', source: SOURCE },
    { value: printedMost(max ?? Number.NaN, units), relation: 'at-most', by: 'the food code', source: SOURCE },
  ];
  const value = sheet.temperatures.rinseC;
  const bound = governing(bounds, value);
  if (bound === undefined) return [];
  return [
    {
      subjects: [machine.id],
      place: machinePlace(placed),
      value,
      limit: bound.value,
      relation: bound.relation,
      say: (f) => {
        const is = `The final rinse of ${machineName(scene, placed)} is at least ${f.temperature(value)} by its data sheet`;
        const [least, most] = bounds.map((one) => f.temperature(one.value)) as [string, string];
        if (bound.relation === 'at-least' && isUnder(value, bound.value))
          return `${is} and the food code asks for ${least}: it does not sanitise; set the booster higher, or take another machine.`;
        if (bound.relation === 'at-most' && isOver(value, bound.value))
          return `${is} and the food code allows ${most} at most: it turns to steam on the way; set the booster lower.`;
        return `${is}; the food code asks for ${least} to ${most}.`;
      },
    },
  ];
}
