import {
  areaPlace,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  readFigure,
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

/** What is said of the machines without a hood, and of the room's exhaust. m³/s. */
export interface WaivedExhaustEnoughMessages {
  'waived-exhaust-enough/what': NoParams;
  'waived-exhaust-enough/enough': Bare;
  'waived-exhaust-enough/too-little': Bare;
  /** Where nobody has said that the room is to take it. */
  'waived-exhaust-enough/would-be-too-little': Bare;
}

interface Bare {
  machines: Name[];
  drawn: number;
  asked: number;
}

const say = createMessages<WaivedExhaustEnoughMessages>();

function measureRoom(scene: Scene, needed: FigureReading): Measurement {
  const bare = scene.machines.filter(({ machine }) => needed.subjects.includes(machine.id));
  const limit = needed.value;
  const asked = limit ?? 0;
  const machines = bare.map((machine) => nameMachine(scene, machine));
  const isSaid = scene.plan.air.hoodWaived === true;
  return holdReading(limit === null ? needed : roomExhaustReading(scene), {
    subjects: needed.subjects,
    place: areaPlace(...bare.map(({ footprint }) => footprint)),
    what: say('waived-exhaust-enough/what'),
    limit,
    ...(isSaid ? {} : { severity: 'watch' as const }),
    message: (drawn) => {
      if (drawn >= asked - TOLERANCE) return say('waived-exhaust-enough/enough', { machines, drawn, asked });
      return say(isSaid ? 'waived-exhaust-enough/too-little' : 'waived-exhaust-enough/would-be-too-little', { machines, drawn, asked });
    },
  });
}
