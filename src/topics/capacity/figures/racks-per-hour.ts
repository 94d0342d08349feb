import { compute, createMessages, type FigureRule, type Message, notesOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { cycleInputs, rackRate, rackRateRecord } from '../../line';

export const rule: FigureRule = {
  id: 'racks-per-hour',
  order: 10,
  title: 'Rated racks an hour',
  group: 'capacity',
  unit: '1/h',
  derive: (scene) =>
    scene.machines.map((placed) => ({
      subjects: [placed.machine.id],
      ...compute(rackRateRecord, rackRate, cycleInputs(placed.sheet)),
      ...notesOf(cornerNote(scene, placed)),
    })),
};

/** What is said beside the rate. */
export interface RacksPerHourMessages {
  'racks-per-hour/corner': { loadS: number };
}

const say = createMessages<RacksPerHourMessages>();

/** A word of care where racks turn a corner: no listing states how long changing them takes there. */
function cornerNote(scene: Scene, { machine, sheet }: PlacedMachine): Message | null {
  const line = scene.lines.find((item) => item.machine.machine.id === machine.id);
  return line?.configuration.kind === 'corner' ? say('racks-per-hour/corner', { loadS: sheet.cycle.loadS }) : null;
}
