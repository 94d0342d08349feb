import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { pipeSpeed, pipeSpeedRecord } from '../formulas/pipeSpeed';
import { lineFlow, needBore } from './support/waterLine';

export const rule: FigureRule = {
  id: 'water-speed',
  order: 230,
  title: 'Speed of the water in its line',
  group: 'water',
  unit: 'm/s',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** When it is so fast. */
export interface WaterSpeedMessages {
  'water-speed/while-rinsing': NoParams;
}

const message = createMessages<WaterSpeedMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const pipe = needBore(scene, placed);
  if ('ask' in pipe) return pipe.ask;
  const flow = lineFlow(placed);
  if (!flow.ok) return refuse(subjects, flow.refusal);
  return {
    subjects,
    ...compute(pipeSpeedRecord, pipeSpeed, { flowM3S: flow.value, boreM: pipe.boreM }),
    notes: [message('water-speed/while-rinsing')],
  };
}
