import type { DataSheet } from '../../../../catalog';
import { createMessages, type FormulaResult, type Message } from '../../../../rules';
import type { PlacedMachine, Scene } from '../../../../scene';
import { rackRate } from '../../formulas/rackRate';

/** A door machine takes one rack at a time. */
export const RACKS_PER_CYCLE = 1;

/** Inputs of the rack rate, as the data sheet states its cycle. */
export const cycleInputs = ({ cycle }: DataSheet) => ({ racksPerCycle: RACKS_PER_CYCLE, ...cycle });

/** Racks an hour that the machine is rated for, or why that is refused. */
export const ratedRate = ({ sheet }: PlacedMachine): FormulaResult => rackRate(cycleInputs(sheet));

/** Wash, rinse, dwell and changing racks, in seconds. */
export const cycleLength = ({ cycle }: DataSheet): number => cycle.washS + cycle.rinseS + cycle.dwellS + cycle.loadS;

export interface RackCycleMessages {
  'racks-per-hour/corner': { loadS: number };
}

const say = createMessages<RackCycleMessages>();

/** A word of care where racks turn a corner: no listing states how long changing them takes there. */
export function cornerNote(scene: Scene, { machine, sheet }: PlacedMachine): Message | null {
  const line = scene.lines.find((item) => item.machine.machine.id === machine.id);
  if (line?.configuration.kind !== 'corner') return null;
  return say('racks-per-hour/corner', { loadS: sheet.cycle.loadS });
}
