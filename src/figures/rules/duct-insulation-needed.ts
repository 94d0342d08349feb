import { ductInsulation, ductInsulationRecord } from '../../engineering';
import type { PlacedRun, Scene } from '../../scene';
import { compute } from '../compute';
import { needLayers, WALL_NOTE } from '../support/ductWalls';
import { subjectsOf } from '../support/runDuct';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'duct-insulation-needed',
  title: 'Least insulation about the run',
  group: 'air',
  unit: 'm',
  derive: (scene) => scene.runs.map((run) => deriveRun(scene, run)),
};

function deriveRun(scene: Scene, placed: PlacedRun): FigureReading {
  const layers = needLayers(scene, placed);
  if ('reading' in layers) return layers.reading;
  return { subjects: subjectsOf(placed), ...compute(ductInsulationRecord, ductInsulation, layers.known), note: WALL_NOTE };
}
