import { ductWall, ductWallRecord } from '../../engineering';
import type { PlacedRun, Scene } from '../../scene';
import { compute } from '../compute';
import { askInsulation, needLayers, WALL_NOTE } from '../support/ductWalls';
import { subjectsOf } from '../support/runDuct';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'duct-wall-temperature',
  title: 'Inner wall of the run',
  group: 'air',
  unit: 'C',
  derive: (scene) => scene.runs.map((run) => deriveRun(scene, run)),
};

function deriveRun(scene: Scene, placed: PlacedRun): FigureReading {
  const { insulation } = placed.run.duct;
  if (insulation === null) return askInsulation(scene, placed);
  const layers = needLayers(scene, placed);
  if ('reading' in layers) return layers.reading;
  const { dewPointC: _dewPointC, ...inputs } = layers.known;
  return {
    subjects: subjectsOf(placed),
    ...compute(ductWallRecord, ductWall, { ...inputs, thicknessM: insulation / 1000 }),
    note: WALL_NOTE,
  };
}
