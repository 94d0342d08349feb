import { type FigureReading, type FigureRule, measured, refusalSentence } from '../../../rules';
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

function deriveArea({ room, plan }: Scene): FigureReading {
  const areaM2 = room.areaMm2 / 1e6;
  return { subjects: [], value: areaM2, how: HOW, note: `${noteFor(areaM2, plan.finish.fixedWalls)} ${COMPARED}` };
}

const HOW = measured('A = floor within the walls', ...routeExemptionRule.source, ...DISH_ROOM_AREA.source);

/** A programme’s figure to plan with, no rule. */
const COMPARED = 'One programme of space gives the dish room of a military school 300 ft² (28 m²).';

function noteFor(areaM2: number, isFixed: boolean | null): string {
  if (isFixed === null) return 'Whether what bounds it is fixed is not known: below 1000 ft² its ways are exempt only then.';
  const ruling = judgeRouteExemption(areaM2, isFixed);
  return ruling.pass
    ? 'Below 1000 ft² within what is fixed: its ways need not be accessible, its approach and its door must.'
    : `Its ways must be accessible: ${refusalSentence(ruling.refusal)}.`;
}
