import { dewPoint, dewPointRecord } from '../../engineering';
import type { PlacedRun, Scene } from '../../scene';
import { compute } from '../compute';
import { needExhaust, subjectsOf } from '../support/runDuct';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'duct-dew-point',
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
