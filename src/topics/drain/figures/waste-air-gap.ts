import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { wasteAirGap, wasteAirGapRecord } from '../formulas/airGap';

export const rule: FigureRule = {
  id: 'waste-air-gap',
  order: 740,
  title: 'Least air gap below the waste pipe',
  group: 'drain',
  unit: 'm',
  derive: (scene) => scene.machines.flatMap(deriveMachine),
};

/**
 * A data sheet that gives its drain no size says nothing of the gap. Of several drains each bears its name. A waste pipe that is
 * known to be wider than the outlet needs the larger gap.
 */
function deriveMachine({ machine, sheet }: PlacedMachine): FigureReading[] {
  const { drainBore, waste } = machine.hookUp;
  const drains = sheet.connections.filter(({ kind, size }) => kind === 'drain' && size > 0);
  return drains.map((connection) => ({
    subjects: [machine.id],
    note: drainBore === null || waste === 'direct' ? AS_OUTLET : 'By the waste pipe, or the outlet where that is wider.',
    ...(drains.length > 1 ? { part: connection.id } : {}),
    ...compute(wasteAirGapRecord, wasteAirGap, { pipeM: Math.max(connection.size, waste === 'direct' ? 0 : (drainBore ?? 0)) / 1000 }),
  }));
}

const AS_OUTLET = 'Where the waste is indirect; the pipe is taken to be as wide as the outlet.';
