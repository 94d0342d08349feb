import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
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

/** By which width the gap goes. */
export interface LeastWasteAirGapMessages {
  'waste-air-gap/as-outlet': NoParams;
  'waste-air-gap/by-pipe': NoParams;
}

const message = createMessages<LeastWasteAirGapMessages>();

/**
 * A data sheet that gives its drain no size says nothing of the gap. Of several drains each bears its name. A waste pipe that is
 * known to be wider than the outlet needs the larger gap.
 */
function deriveMachine({ machine, sheet }: PlacedMachine): FigureReading[] {
  const { drainBore, waste } = machine.hookUp;
  const drains = sheet.connections.filter(({ kind, size }) => kind === 'drain' && size > 0);
  return drains.map((connection) => ({
    subjects: [machine.id],
    notes: [message(drainBore === null || waste === 'direct' ? 'waste-air-gap/as-outlet' : 'waste-air-gap/by-pipe')],
    ...(drains.length > 1 ? { part: connection.id } : {}),
    ...compute(wasteAirGapRecord, wasteAirGap, { pipeM: Math.max(connection.size, waste === 'direct' ? 0 : (drainBore ?? 0)) / 1000 }),
  }));
}
