import {
  areaPlace,
  type Check,
  type FigureReading,
  holdReading,
  list,
  type Measurement,
  machineName,
  readFigure,
  sentence,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as waivedHoodExhaustFigure } from '../figures/waived-hood-exhaust';
import { roomExhaustReading } from './support/roomExhaust';

export const check: Check = {
  id: 'waived-exhaust-enough',
  order: 450,
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
  why: 'Where no hood hangs over a machine the room’s own exhaust must take its heat and moisture. While nobody has said that the room is to take it, a hood is missing, and this is only a watch. A machine that is listed as condensing is free of it: the local official decides.',
  measure: (scene) =>
    readFigure(waivedHoodExhaustFigure, scene)
      .filter(({ part }) => part === undefined)
      .map((needed) => measureRoom(scene, needed)),
};

function measureRoom(scene: Scene, needed: FigureReading): Measurement {
  const bare = scene.machines.filter(({ machine }) => needed.subjects.includes(machine.id));
  const limit = needed.value;
  const name = sentence(list(bare.map((machine) => machineName(scene, machine))));
  const stands = `${name} ${bare.length === 1 ? 'stands' : 'stand'} without a hood`;
  const isSaid = scene.plan.air.hoodWaived === true;
  return holdReading(limit === null ? needed : roomExhaustReading(scene), {
    subjects: needed.subjects,
    place: areaPlace(...bare.map(({ footprint }) => footprint)),
    name: 'whether the room draws enough without a hood',
    limit,
    ...(isSaid ? {} : { severity: 'watch' as const }),
    say: (value, f) => {
      const asked = f.airflow(limit ?? 0);
      if (value >= (limit ?? 0) - TOLERANCE) return `${stands}; the room draws ${f.airflow(value)} and ${asked} are asked.`;
      const short = `${f.airflow((limit ?? 0) - value)} too little`;
      return isSaid
        ? `${stands}, and the room draws ${f.airflow(value)} of the ${asked} that are asked: ${short}. Give the room an exhaust at its ceiling for that.`
        : `${stands}. For the room to take its place it would have to draw ${asked}, and it draws ${f.airflow(value)}: ${short}.`;
    },
  });
}
