import { drainFlow, drainFlowRecord } from '../../engineering';
import type { Appliance } from '../../scene';
import { compute } from '../compute';
import { capacityInputs, ROUGHNESS_NOTE } from '../support/drains';
import { askHookUp } from '../support/hookUp';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'drain-capacity',
  title: 'What the machine’s drain carries',
  group: 'drain',
  unit: 'm3/s',
  derive: (scene) => scene.appliances.flatMap(deriveReadings),
};

/** `half-full`, as sanitary drains are sized, and `full`, the most that runs off without pressure. */
function deriveReadings(placed: Appliance): FigureReading[] {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  if (drainBore === null) return [askHookUp(placed, 'drainBore')];
  if (drainSlope === null) return [askHookUp(placed, 'drainSlope')];
  return PARTS.map(({ part, depth, note }) => ({
    part,
    subjects: [placed.machine.id],
    ...compute(drainFlowRecord, drainFlow, capacityInputs(drainBore, drainSlope, depth)),
    note: `${note} ${ROUGHNESS_NOTE}`,
  }));
}

const PARTS = [
  { part: 'half-full', depth: 0.5, note: 'Sanitary drains are sized half full.' },
  { part: 'full', depth: 1, note: 'Twice as much, and no air left in the pipe.' },
] as const;
