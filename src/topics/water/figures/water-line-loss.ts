import { askFor, compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { PIPE_SMOOTHNESS, pipeLoss, pipeLossRecord } from '../formulas/pipeLoss';
import { lineFlow, needBore, needWaterLine, RIGHT_ANGLES } from './support/waterLine';

export const rule: FigureRule = {
  id: 'water-line-loss',
  order: 240,
  title: 'Pressure that the water line takes',
  group: 'water',
  unit: 'Pa',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** While the machine rinses, by the higher of the two printed forms. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const found = needWaterLine(scene, placed);
  if ('ask' in found) return found.ask;
  const pipe = needBore(scene, placed);
  if ('ask' in pipe) return pipe.ask;
  const { material } = scene.plan.pipes;
  if (material === null) return askFor([placed.machine.id], 'material of the pipe to the machine', ['pipes', 'material']);
  const { stub, lengthM } = found.line;
  const subjects = [placed.machine.id, stub];
  const flow = lineFlow(placed);
  if (!flow.ok) return refuse(subjects, flow.refusal);
  const inputs = { flowM3S: flow.value, boreM: pipe.boreM, lengthM, smoothness: PIPE_SMOOTHNESS[material], form: 'head' as const };
  return { subjects, ...compute(pipeLossRecord, pipeLoss, inputs), note: BARE };
}

const BARE = `${RIGHT_ANGLES} While the machine rinses; bends, valves and a hose come on top.`;
