import { TURNING_CIRCLE, TURNING_T } from '../../engineering';
import { boundsOf, centredRectangle, findStandingPlace, growBounds, isNearBounds, obstacleBody } from '../../geometry';
import { floorObstacles, type Line, type Scene } from '../../scene';
import { measured } from '../support/measured';
import { refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'turning-space',
  title: 'From the operator to where a wheelchair turns',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

/** 5 ft: about two steps. */
const WITHIN = 1524;
const DIAMETER = (TURNING_CIRCLE.min ?? 0) * 1000;

/** To the middle of the nearest free circle. */
function deriveLine(scene: Scene, { machine, stand }: Line): FigureReading[] {
  if (stand === null) return [];
  const subjects = [machine.machine.id];
  const near = stand.centre;
  const around = growBounds(boundsOf([near]), WITHIN + DIAMETER / 2);
  const found = findStandingPlace({
    // Wider than is looked, so that its edges bound nothing.
    region: [centredRectangle(near, 0, 3 * WITHIN, 3 * WITHIN)],
    room: scene.room.outline,
    obstacles: floorObstacles(scene)
      .map(({ polygon }) => polygon)
      .filter((polygon) => isNearBounds(around, obstacleBody(polygon).bounds)),
    near,
    width: DIAMETER,
    within: WITHIN,
  });
  if (found === null) return [refuse(subjects, 'no circle of 60 in is free within 5 ft of the operator; a T of three arms may be')];
  return [{ subjects, value: found.distance / 1000, how: HOW, note: NOTE }];
}

const HOW = measured('d = from the operator to the middle of the nearest free circle of 60 in', ...TURNING_CIRCLE.source, TURNING_T.source);

const NOTE =
  'A circle of 60 in on free floor. A T of arms 36 in wide in a square of 60 in serves as well; neither is asked in a work room.';
