import type { RinseHoldInputs } from '../../engineering';
import type { PlacedMachine, Scene } from '../../scene';
import { toSI } from '../../units';
import type { compute } from '../compute';
import type { FigureReading } from '../types';
import { askVersion, versionOf } from './power';
import { cycleLength } from './rackCycle';
import { askFor, noteOf } from './readings';

/** Share of an electric heater's power that stays in the water: San Joaquin County CA, form EHD 16-01 (W-HF2). */
export const HEATER_EFFICIENCY = 0.98;

/** Machines that sanitise with a hot rinse, so that a booster stands between supply and rinse. */
export const hotRinseMachines = (scene: Scene): PlacedMachine[] => scene.machines.filter(({ sheet }) => sheet.sanitizing === 'hot-water');

/** The water that the machine is fed with, in °C, or the reading that asks for it. */
export function needFeed({ plan }: Scene, { sheet, machine }: PlacedMachine): { feedC: number } | { ask: FigureReading } {
  const field = sheet.waterFeed === 'hot' ? 'hotWaterC' : 'coldWaterC';
  const feedC = plan.supply[field];
  if (feedC !== null) return { feedC };
  return { ask: askFor([machine.id], `temperature of the ${sheet.waterFeed} water`, ['supply', field]) };
}

/** The reading of a figure that follows from heating the rinse of one rack after the other, for each machine with a hot rinse. */
export function deriveRinse(scene: Scene, answer: (inputs: RinseHoldInputs) => ReturnType<typeof compute>): FigureReading[] {
  return hotRinseMachines(scene).map((placed) => {
    const feed = needFeed(scene, placed);
    if ('ask' in feed) return feed.ask;
    const version = versionOf(placed);
    if (version === undefined) return askVersion(scene, placed);
    const inputs = {
      perCycleM3: toSI(placed.sheet.rinseWaterL, 'L'),
      supplyC: feed.feedC,
      rinseC: placed.sheet.temperatures.rinseC,
      boosterW: toSI(version.powerKw, 'kW'),
      efficiency: HEATER_EFFICIENCY,
      cycleS: cycleLength(placed.sheet),
    };
    return { subjects: [placed.machine.id], ...answer(inputs), ...noteOf(WHOLE_POWER, recoveryNote(placed)) };
  });
}

const WHOLE_POWER =
  'The data sheet states no power for the booster alone, so the whole rated power is taken; pumps and tank heater leave it less, so the wait can be longer.';

/** Where vapour warms the feed, what it gives is not counted: neither effectiveness nor heat stands on the data sheet. */
export const recoveryNote = ({ sheet }: PlacedMachine): string | null =>
  sheet.vent.kind === 'recovery'
    ? 'Heat won back from the vapour is not on the data sheet and not counted; it shortens the wait after the first racks.'
    : null;
