import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { subjectsOf } from '../../air';
import { ductWall, ductWallRecord } from '../formulas/ductWall';
import { askInsulation, markGoverning, needLayers, type PartLayers, wallNotes } from './support/ductWalls';

export const rule: FigureRule = {
  id: 'duct-wall-temperature',
  order: 590,
  title: 'Inner wall of the run',
  group: 'air',
  unit: 'C',
  derive: (scene) => scene.runs.flatMap((run) => deriveRun(scene, run)),
};

/** Indoors, and outdoors where the run goes there; the colder wall governs. */
function deriveRun(scene: Scene, placed: PlacedRun): FigureReading[] {
  const { insulation } = placed.run.duct;
  if (insulation === null) return [askInsulation(scene, placed)];
  const layers = needLayers(scene, placed);
  if ('reading' in layers) return [layers.reading];
  return markGoverning(
    layers.parts.map((part) => derivePart(placed, part, insulation / 1000)),
    'least',
  );
}

function derivePart(placed: PlacedRun, layers: PartLayers, thicknessM: number): FigureReading {
  const { part } = layers;
  if ('reading' in layers)
    return {
      ...layers.reading,
      part,
    };
  const { dewPointC: _dewPointC, ...inputs } = layers.known;
  const answer = compute(ductWallRecord, ductWall, { thicknessM, ...inputs });
  return { part, subjects: subjectsOf(placed), ...answer, ...wallNotes(placed, part, thicknessM > 0) };
}
