import { createMessages, type FigureReading, type NoParams, notesOf, refuse } from '../../../../rules';
import type { PlacedRun, Scene } from '../../../../scene';
import { subjectsOf } from '../../../air';
import type { OperatingPoint } from '../../formulas/operatingPoint';
import { needRunFan, type RunFan } from './runFan';

/** What the point of a fan rests on. */
export interface FanReadingsMessages {
  'fan-readings/air-of-run': NoParams;
  'fan-readings/whole-loss': NoParams;
  'fan-readings/hunts': NoParams;
}

const say = createMessages<FanReadingsMessages>();

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
  const hunts = point.value.crossings > 1 ? say('fan-readings/hunts') : null;
  return [
    {
      subjects: subjectsOf(placed),
      ...answer(fan.known, point.value),
      ...notesOf(say('fan-readings/air-of-run'), say('fan-readings/whole-loss'), hunts),
    },
  ];
}
