import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { subjectsOf } from '../../air';
import { ductInsulation, ductInsulationRecord } from '../formulas/ductInsulation';
import { markGoverning, needLayers, type PartLayers, wallNotes } from './support/ductWalls';

export const rule: FigureRule = {
  id: 'duct-insulation-needed',
  order: 600,
  title: 'Least insulation about the run',
  group: 'air',
  unit: 'm',
  derive: (scene) => scene.runs.flatMap((run) => deriveRun(scene, run)),
};

/** Indoors, and outdoors where the run goes there; the thicker one governs. */
function deriveRun(scene: Scene, placed: PlacedRun): FigureReading[] {
  const layers = needLayers(scene, placed);
  if ('reading' in layers) return [layers.reading];
  return markGoverning(
    layers.parts.map((part) => derivePart(placed, part)),
    'greatest',
  );
}

function derivePart(placed: PlacedRun, layers: PartLayers): FigureReading {
  const { part } = layers;
  if ('reading' in layers)
    return {
      ...layers.reading,
      part,
    };
  const answer = compute(ductInsulationRecord, ductInsulation, layers.known);
  return { part, subjects: subjectsOf(placed), ...answer, ...wallNotes(placed, part, answer.value !== 0) };
}
