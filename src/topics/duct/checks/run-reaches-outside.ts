import { containsPoint, distanceToOutline, type Point3 } from '../../../geometry';
import { type Check, createMessages, type Measurement, type Name, type NoParams, nameRun, pointPlace } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { isOver } from '../../room';

export const check: Check = {
  id: 'run-reaches-outside',
  order: 240,
  title: 'The run ends in the open air',
  group: 'air',
  unit: 'yes-no',
  relation: 'equals',
  source: { kind: 'geometry', text: 'A run ends beyond the wall, or above the ceiling where it goes through the roof.' },
  why: 'A run that ends in the room or above a closed ceiling gives its vapour to the building. How far the outlet must be from openings, intakes and neighbours is for local code.',
  measure: (scene) => scene.runs.flatMap((run) => measureRun(scene, run)),
};

export interface RunReachesOutsideMessages {
  'run-reaches-outside/ask-ceiling-height': NoParams;
  'run-reaches-outside/unknown': { run: Name };
  'run-reaches-outside/outside': { run: Name };
  'run-reaches-outside/inside': { run: Name; outlet: 'wall' | 'roof' };
}

const say = createMessages<RunReachesOutsideMessages>();

function measureRun(scene: Scene, run: PlacedRun): Measurement[] {
  const end = run.points.at(-1);
  if (end === undefined) return [];
  const name = nameRun(scene, run);
  const common = { subjects: [run.run.id, run.run.machine], place: pointPlace(end), limit: true };
  const isOut = isOutside(scene, run, end);
  if (isOut === null) {
    const ask = { input: say('run-reaches-outside/ask-ceiling-height'), path: ['room', 'ceilingHeight'] };
    return [{ value: null, ask, message: say('run-reaches-outside/unknown', { run: name }), ...common }];
  }
  const message = isOut
    ? say('run-reaches-outside/outside', { run: name })
    : say('run-reaches-outside/inside', { run: name, outlet: run.run.outlet });
  return [{ value: isOut, message, ...common }];
}

/** null: the ceiling that decides is not known. */
function isOutside({ room }: Scene, { run }: PlacedRun, end: Point3): boolean | null {
  const isBeyondWalls = !containsPoint(room.outline, end) || !isOver(distanceToOutline(room.outline, end));
  if (isBeyondWalls) return true;
  if (run.outlet === 'wall') return false;
  return room.ceilingHeight === null ? null : !isOver(room.ceilingHeight - end.z);
}
