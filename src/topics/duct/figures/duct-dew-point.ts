import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { dewPoint, dewPointRecord, subjectsOf } from '../../air';
import { needExhaust } from './support/runDuct';

export const rule: FigureRule = {
  id: 'duct-dew-point',
  order: 580,
  title: 'Dew point of the air in the run',
  group: 'air',
  unit: 'C',
  derive: (scene) => scene.runs.map((run) => deriveRun(scene, run)),
};

function deriveRun(scene: Scene, placed: PlacedRun): FigureReading {
  const exhaust = needExhaust(scene, placed);
  if ('reading' in exhaust) return exhaust.reading;
  return { subjects: subjectsOf(placed), ...compute(dewPointRecord, dewPoint, { vapourPa: exhaust.known.vapourPa }) };
}
