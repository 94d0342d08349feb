import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
import { exhaustShare, exhaustShareRecord } from '../formulas/airBalance';
import { atMachines, needRoomExhaust, sumOf } from './support/roomAir';

export const rule: FigureRule = {
  id: 'exhaust-share',
  order: 490,
  title: 'Part of the exhaust at the machines',
  group: 'air',
  unit: 'share',
  derive,
};

export interface ExhaustShareMessages {
  'exhaust-share/rest': NoParams;
}

const say = createMessages<ExhaustShareMessages>();

/** Only where a hood or a run draws at a machine. */
function derive(scene: Scene): FigureReading[] {
  if (scene.plan.hoods.length + scene.plan.runs.length === 0 || scene.machines.length === 0) return [];
  const exhaust = needRoomExhaust(scene);
  if ('reading' in exhaust)
    return [
      {
        ...exhaust.reading,
        subjects: [],
      },
    ];
  const inputs = { atMachinesM3s: atMachines(exhaust.known), exhaustM3s: sumOf(exhaust.known) };
  return [{ subjects: [], ...compute(exhaustShareRecord, exhaustShare, inputs), notes: [say('exhaust-share/rest')] }];
}
