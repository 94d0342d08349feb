import { createMessages, createRefusal, type FigureReading, type FigureRule, measured, type NoParams, refuse } from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { TURNING_CIRCLE, TURNING_T } from '../../room';
import { findTurning, type Turning } from './support/turning';

export const rule: FigureRule = {
  id: 'turning-space',
  order: 840,
  title: 'From the operator to where a wheelchair turns',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

export interface TurningSpaceMessages {
  'turning-space/circle': NoParams;
  'turning-space/t-shape': NoParams;
}

const say = createMessages<TurningSpaceMessages>();

/** To the middle of the nearest free circle, or of a T where there is no circle. */
function deriveLine(scene: Scene, line: Line): FigureReading[] {
  if (line.stand === null) return [];
  const subjects = [line.machine.machine.id];
  const found = findTurning(scene, line);
  if (found === null) return [refuse(subjects, createRefusal(rule, 'no-turning-space', {}))];
  return [{ part: found.kind, subjects, value: found.distance / 1000, how: HOW[found.kind], notes: [say(`turning-space/${found.kind}`)] }];
}

const HOW = {
  circle: measured('d = from the operator to the middle of the nearest free circle of 60 in', ...TURNING_CIRCLE.source, TURNING_T.source),
  't-shape': measured('d = from the operator to the middle of the nearest free T in a square of 60 in', TURNING_T.source),
} as const satisfies Record<Turning['kind'], unknown>;
