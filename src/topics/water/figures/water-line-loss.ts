import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
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

/** What the input is called, and what was left out. */
export interface WaterLineLossMessages {
  'water-line-loss/ask-material': NoParams;
  'water-line-loss/bare-pipe': NoParams;
}

const message = createMessages<WaterLineLossMessages>();

/** While the machine rinses, by the higher of the two printed forms. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const found = needWaterLine(scene, placed);
  if ('ask' in found) return found.ask;
  const pipe = needBore(scene, placed);
  if ('ask' in pipe) return pipe.ask;
  const { material } = scene.plan.pipes;
  if (material === null) return askFor([placed.machine.id], message('water-line-loss/ask-material'), ['pipes', 'material']);
  const { stub, lengthM } = found.line;
  const subjects = [placed.machine.id, stub];
  const flow = lineFlow(placed);
  if (!flow.ok) return refuse(subjects, flow.refusal);
  const inputs = { flowM3S: flow.value, boreM: pipe.boreM, lengthM, smoothness: PIPE_SMOOTHNESS[material], form: 'head' as const };
  return { subjects, ...compute(pipeLossRecord, pipeLoss, inputs), notes: [RIGHT_ANGLES, message('water-line-loss/bare-pipe')] };
}
