import { createMessages, type FigureReading, type FigureRule, type Message, measured, type NoParams, type Refusal } from '../../../rules';
import type { Scene } from '../../../scene';
import { judgeRouteExemption, routeExemptionRule } from '../../room';
import { DISH_ROOM_AREA } from '../formulas/surroundings';

export const rule: FigureRule = {
  id: 'work-area',
  order: 830,
  title: 'Floor of the room',
  group: 'people',
  unit: 'm2',
  derive: (scene) => [deriveArea(scene)],
};

/** What is said of the room's size. */
export interface WorkAreaMessages {
  'work-area/bounds-unknown': NoParams;
  'work-area/exempt': NoParams;
  'work-area/not-exempt': { refusal: Refusal };
  /** A programme’s figure to plan with, no rule. */
  'work-area/programme': NoParams;
}

const say = createMessages<WorkAreaMessages>();

function deriveArea({ room, plan }: Scene): FigureReading {
  const areaM2 = room.areaMm2 / 1e6;
  return { subjects: [], value: areaM2, how: HOW, notes: [noteFor(areaM2, plan.finish.fixedWalls), say('work-area/programme')] };
}

const HOW = measured('A = floor within the walls', ...routeExemptionRule.source, ...DISH_ROOM_AREA.source);

function noteFor(areaM2: number, isFixed: boolean | null): Message {
  if (isFixed === null) return say('work-area/bounds-unknown');
  const ruling = judgeRouteExemption(areaM2, isFixed);
  return ruling.pass ? say('work-area/exempt') : say('work-area/not-exempt', { refusal: ruling.refusal });
}
