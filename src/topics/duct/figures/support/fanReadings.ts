import { type FigureReading, noteOf, refuse } from '../../../../rules';
import type { PlacedRun, Scene } from '../../../../scene';
import { subjectsOf } from '../../../air';
import type { OperatingPoint } from '../../formulas/operatingPoint';
import { needRunFan, type RunFan } from './runFan';

/** One number of the point where a fan runs, and how it was found. */
export type FanAnswer = (fan: RunFan, point: OperatingPoint) => Pick<FigureReading, 'value' | 'how'>;

/** A reading for each run whose machine has a vent of its own. */
export const fanReadings = (scene: Scene, answer: FanAnswer): FigureReading[] => scene.runs.flatMap((run) => deriveRun(scene, run, answer));

function deriveRun(scene: Scene, placed: PlacedRun, answer: FanAnswer): FigureReading[] {
  const fan = needRunFan(scene, placed);
  if (fan === null) return [];
  if ('reading' in fan) return [fan.reading];
  const { point } = fan.known;
  if (!point.ok) return [refuse(subjectsOf(placed), point.refusal)];
  const hunts = point.value.crossings > 1 ? 'The curves meet more than once: the fan may hunt between them.' : null;
  return [{ subjects: subjectsOf(placed), ...answer(fan.known, point.value), ...noteOf(AIR_OF_RUN, WHOLE_LOSS, hunts) }];
}

const AIR_OF_RUN = 'The curve of the data sheet, turned by the fan laws to the air in the run.';
const WHOLE_LOSS = 'Held against the whole loss, that of the open end with it.';
