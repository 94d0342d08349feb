import { distance } from '../../../geometry';
import { askFor, type FigureReading, type FigureRule, judge, measured } from '../../../rules';
import { type Line, type Scene, thingsOf } from '../../../scene';
import { HAND_SINK_DISTANCE } from '../formulas/surroundings';

export const rule: FigureRule = {
  id: 'hand-sink-distance',
  order: 880,
  title: 'Operator to the nearest hand sink',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

function deriveLine(scene: Scene, { machine, stand }: Line): FigureReading[] {
  if (stand === null) return [];
  const subjects = [machine.machine.id];
  const [nearest] = thingsOf(scene, 'hand-sink')
    .map(({ thing }) => ({ thing, distanceM: distance(stand.centre, thing) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (nearest === undefined) return [askFor(subjects, 'hand sink', ['things'])];
  return [{ subjects: [...subjects, nearest.thing.id], value: nearest.distanceM, how: HOW, note: noteFor(nearest.distanceM) }];
}

const HOW = measured('L = straight way from the standing place to the middle of the sink', ...HAND_SINK_DISTANCE.source);

/** The way on foot is never shorter than the straight one: what is too far here is too far on foot. */
const noteFor = (distanceM: number) =>
  judge(HAND_SINK_DISTANCE, distanceM) === 'pass'
    ? 'Straight; on foot it is as long or longer. Where law sets a distance it is 25 ft.'
    : 'Straight, and more than the 25 ft that some laws set.';
