import {
  type Bound,
  type Check,
  createMessages,
  governing,
  isOver,
  isUnder,
  type Measurement,
  machinePlace,
  type Name,
  nameMachine,
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

/** What is said of the rinse. °C. */
export interface RinseTemperatureMessages {
  'rinse-temperature/within': { machine: Name; rinseC: number; leastC: number; mostC: number };
  'rinse-temperature/cool': { machine: Name; rinseC: number; leastC: number };
  'rinse-temperature/steams': { machine: Name; rinseC: number; mostC: number };
}

const say = createMessages<RinseTemperatureMessages>();

/** What the data sheet states as its least at the manifold. Chemicals sanitise at lower temperatures. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { machine, sheet } = placed;
  const { units } = scene.plan.settings;
  const { min, max } = manifoldLimit(classOf(placed));
  const [leastC, mostC] = [printedLeast(min ?? Number.NaN, units), printedMost(max ?? Number.NaN, units)];
  const bounds: Bound[] = [
    { value: leastC, relation: 'at-least', by: 'the food code', source: SOURCE },
    { value: mostC, relation: 'at-most', by: 'the food code', source: SOURCE },
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
      message: describeRinse(bound, { machine: nameMachine(scene, placed), rinseC: value, leastC, mostC }),
    },
  ];
}

function describeRinse({ relation, value }: Bound, rinse: RinseTemperatureMessages['rinse-temperature/within']) {
  const { machine, rinseC, leastC, mostC } = rinse;
  if (relation === 'at-least' && isUnder(rinseC, value)) return say('rinse-temperature/cool', { machine, rinseC, leastC });
  if (relation === 'at-most' && isOver(rinseC, value)) return say('rinse-temperature/steams', { machine, rinseC, mostC });
  return say('rinse-temperature/within', rinse);
}
