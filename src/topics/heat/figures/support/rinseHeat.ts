import { askFor, type compute, createMessages, type FigureReading, type Message, type NoParams, notesOf, refuse } from '../../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import { cycleLength } from '../../../line';
import { askVersion, versionOf } from '../../../power';
import { feedOf, needFeed } from '../../../water';
import { warmedSupply } from '../../formulas/recoveredShare';
import type { RinseHoldInputs } from '../../formulas/rinseHold';
import { BOOSTER_INPUT } from './heatAsks';

/** What is said of heating the rinse. */
export interface RinseHeatMessages {
  'rinse-heat/whole-power': NoParams;
  'rinse-heat/recovery-counted': NoParams;
  'rinse-heat/recovery-not-counted': NoParams;
}

const say = createMessages<RinseHeatMessages>();

/** Share of an electric heater's power that stays in the water: San Joaquin County CA, form EHD 16-01. */
export const HEATER_EFFICIENCY = 0.98;

/** Machines that sanitise with a hot rinse, so that a booster stands between supply and rinse. */
export const hotRinseMachines = (scene: Scene): PlacedMachine[] => scene.machines.filter(({ sheet }) => sheet.sanitizing === 'hot-water');

/** Share of the rinse's heat that the machine wins back; 0 where it does not, or where its data sheet does not say. */
export const recoveredOf = (placed: PlacedMachine): number =>
  placed.sheet.vent.kind === 'recovery' && feedOf(placed) === 'cold' ? (placed.sheet.vent.recovered ?? 0) : 0;

/** The water as it comes to the booster, in °C: the feed, warmed by what the machine wins back. */
export function needBoosterFeed(scene: Scene, placed: PlacedMachine): { feedC: number } | { ask: FigureReading } {
  const feed = needFeed(scene, placed);
  const share = recoveredOf(placed);
  if ('ask' in feed || share === 0) return feed;
  const warmed = warmedSupply({ supplyC: feed.feedC, rinseC: placed.sheet.temperatures.rinseC, share });
  return warmed.ok ? { feedC: warmed.value } : { ask: refuse([placed.machine.id], warmed.refusal) };
}

/** Whether its booster stands apart, with a circuit of its own. */
export const isFedApart = ({ machine }: PlacedMachine): boolean => machine.hookUp.boosterPlace === 'apart';

/**
 * Power of the booster: that of the data sheet, else all that the machine is rated for; or the reading that asks for its version. Of
 * one that stands apart the machine’s rating says nothing.
 */
function needBooster(scene: Scene, placed: PlacedMachine): { boosterW: number; note: Message | null } | { ask: FigureReading } {
  const { booster } = placed.sheet;
  if (booster !== null) return { boosterW: booster, note: null };
  if (isFedApart(placed)) return { ask: askFor([placed.machine.id], BOOSTER_INPUT, dataSheetPath(scene, placed, 'booster')) };
  const version = versionOf(placed);
  return version === undefined
    ? { ask: askVersion(placed) }
    : { boosterW: toSI(version.powerKw, 'kW'), note: say('rinse-heat/whole-power') };
}

/** The reading of a figure that follows from heating the rinse of one rack after the other, for each machine with a hot rinse. */
export function deriveRinse(scene: Scene, answer: (inputs: RinseHoldInputs) => ReturnType<typeof compute>): FigureReading[] {
  return hotRinseMachines(scene).map((placed) => {
    const feed = needBoosterFeed(scene, placed);
    if ('ask' in feed) return feed.ask;
    const booster = needBooster(scene, placed);
    if ('ask' in booster) return booster.ask;
    const inputs = {
      perCycleM3: toSI(placed.sheet.rinseWaterL, 'L'),
      supplyC: feed.feedC,
      rinseC: placed.sheet.temperatures.rinseC,
      boosterW: booster.boosterW,
      efficiency: HEATER_EFFICIENCY,
      cycleS: cycleLength(placed.sheet),
    };
    return { subjects: [placed.machine.id], ...answer(inputs), ...notesOf(booster.note, recoveryNote(placed)) };
  });
}

/** Where vapour warms the feed: whether what it gives is counted. */
export function recoveryNote(placed: PlacedMachine): Message | null {
  if (placed.sheet.vent.kind !== 'recovery') return null;
  return say(recoveredOf(placed) > 0 ? 'rinse-heat/recovery-counted' : 'rinse-heat/recovery-not-counted');
}
