import { type Check, list, type Measurement, machineName, sentence, TOLERANCE } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import type { Scene } from '../../scene';
import { holdReading } from '../support/holdReading';
import { roomExhaustReading } from '../support/roomExhaust';

export const check: Check = {
  id: 'waived-exhaust-enough',
  title: 'The room takes the air of a machine without a hood',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'International Mechanical Code',
    section: '507.3 and 507.1: 0.70 cfm to a square foot of floor, each appliance without its hood as at least 100 ft²',
    confidence: 'secondary',
  },
  why: 'Where no hood hangs over a machine the room’s own exhaust must take its heat and moisture. A machine that is listed as condensing is free of it: the local official decides.',
  measure: (scene) =>
    readingsOf(scene, 'waived-hood-exhaust')
      .filter(({ part }) => part === undefined)
      .map((needed) => measureRoom(scene, needed)),
};

function measureRoom(scene: Scene, needed: FigureReading): Measurement {
  const bare = scene.appliances.filter(({ machine }) => needed.subjects.includes(machine.id));
  const limit = needed.value;
  const name = sentence(list(bare.map((machine) => machineName(scene, machine))));
  const hangs = bare.length === 1 ? 'stands' : 'stand';
  return holdReading(limit === null ? needed : roomExhaustReading(scene), {
    subjects: needed.subjects,
    place: { kind: 'machines', ids: needed.subjects },
    name: 'whether the room draws enough without a hood',
    limit,
    say: (value, f) =>
      value >= (limit ?? 0) - TOLERANCE
        ? `${name} ${hangs} without a hood; the room draws ${f.airflow(value)} and ${f.airflow(limit ?? 0)} are asked.`
        : `${name} ${hangs} without a hood, and the room draws ${f.airflow(value)} of the ${f.airflow(limit ?? 0)} that are asked: ${f.airflow((limit ?? 0) - value)} too little. Give the room an exhaust at its ceiling for that.`,
  });
}
