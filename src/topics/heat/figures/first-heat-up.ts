import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';
import { toSI } from '../../../units';
import { askVersion, versionOf } from '../../power';
import { needFeed } from '../../water';
import { firstHeatUp, firstHeatUpRecord } from '../formulas/firstHeatUp';
import { heatUpTime, heatUpTimeRecord } from '../formulas/heatUpTime';
import { BOOSTER_INPUT } from './support/heatAsks';
import { HEATER_EFFICIENCY, hotRinseMachines, isFedApart } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'first-heat-up',
  order: 390,
  title: 'From filling to the first rack, at least',
  group: 'heat',
  unit: 's',
  derive: (scene) => hotRinseMachines(scene).map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface FirstHeatUpMessages {
  'first-heat-up/one-rinse': NoParams;
  'first-heat-up/order': NoParams;
}

const say = createMessages<FirstHeatUpMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const { machine, sheet } = placed;
  const { tank, booster } = sheet;
  if (booster === null) return askFor([machine.id], BOOSTER_INPUT, dataSheetPath(scene, placed, 'booster'));
  const feed = needFeed(scene, placed);
  if ('ask' in feed) return feed.ask;
  const rinse = { waterM3: toSI(sheet.rinseWaterL, 'L'), toC: sheet.temperatures.rinseC, powerW: booster };
  const subjects = [machine.id];
  if (tank === null) {
    const inputs = { fromC: feed.feedC, efficiency: HEATER_EFFICIENCY, ...rinse };
    return { subjects, ...compute(heatUpTimeRecord, heatUpTime, inputs), notes: [say('first-heat-up/one-rinse')] };
  }
  const version = versionOf(placed);
  if (version === undefined) return askVersion(placed);
  const inputs = {
    supplyC: feed.feedC,
    tankM3: tank.volume,
    tankC: sheet.temperatures.washC,
    tankW: tank.heater,
    boosterM3: rinse.waterM3,
    boosterC: rinse.toC,
    boosterW: booster,
    efficiency: HEATER_EFFICIENCY,
    order: isFedApart(placed) || tank.heater + booster <= toSI(version.powerKw, 'kW') ? ('together' as const) : ('in-turn' as const),
  };
  return {
    subjects,
    ...compute(firstHeatUpRecord, firstHeatUp, inputs),
    notes: [say('first-heat-up/one-rinse'), say('first-heat-up/order')],
  };
}
