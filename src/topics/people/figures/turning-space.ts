import { createRefusal, type FigureReading, type FigureRule, measured, refuse } from '../../../rules';
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

/** To the middle of the nearest free circle, or of a T where there is no circle. */
function deriveLine(scene: Scene, line: Line): FigureReading[] {
  if (line.stand === null) return [];
  const subjects = [line.machine.machine.id];
  const found = findTurning(scene, line);
  if (found === null) return [refuse(subjects, createRefusal(rule, 'no-turning-space', {}))];
  return [{ part: found.kind, subjects, value: found.distance / 1000, how: HOW[found.kind], note: NOTES[found.kind] }];
}

const HOW = {
  circle: measured('d = from the operator to the middle of the nearest free circle of 60 in', ...TURNING_CIRCLE.source, TURNING_T.source),
  't-shape': measured('d = from the operator to the middle of the nearest free T in a square of 60 in', TURNING_T.source),
} as const satisfies Record<Turning['kind'], unknown>;

const NOTES: Record<Turning['kind'], string> = {
  circle: 'A circle of 60 in on free floor. A T of arms 36 in wide in a square of 60 in serves as well; neither is asked in a work room.',
  't-shape':
    'No circle of 60 in is free, but a T of arms 36 in wide in a square of 60 in is. It is looked for along the walls, the tables and the machine, not slanted between them. Neither is asked in a work room.',
};
