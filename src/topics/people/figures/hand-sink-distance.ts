import { distance } from '../../../geometry';
import { askFor, createMessages, type FigureReading, type FigureRule, judge, type Message, measured, type NoParams } from '../../../rules';
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

export interface HandSinkDistanceMessages {
  'hand-sink-distance/ask-sink': NoParams;
  'hand-sink-distance/near': NoParams;
  'hand-sink-distance/far': NoParams;
}

const say = createMessages<HandSinkDistanceMessages>();

function deriveLine(scene: Scene, { machine, stand }: Line): FigureReading[] {
  if (stand === null) return [];
  const subjects = [machine.machine.id];
  const [nearest] = thingsOf(scene, 'hand-sink')
    .map(({ thing }) => ({ thing, distanceM: distance(stand.centre, thing) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (nearest === undefined) return [askFor(subjects, say('hand-sink-distance/ask-sink'), ['things'])];
  return [{ subjects: [...subjects, nearest.thing.id], value: nearest.distanceM, how: HOW, notes: [noteFor(nearest.distanceM)] }];
}

const HOW = measured('L = straight way from the standing place to the middle of the sink', ...HAND_SINK_DISTANCE.source);

/** The way on foot is never shorter than the straight one: what is too far here is too far on foot. */
const noteFor = (distanceM: number): Message =>
  say(judge(HAND_SINK_DISTANCE, distanceM) === 'pass' ? 'hand-sink-distance/near' : 'hand-sink-distance/far');
