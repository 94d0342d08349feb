import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';
import { toSI } from '../../../units';
import { needFeed } from '../../water';
import { recoveredShare, recoveredShareRecord } from '../formulas/recoveredShare';
import { recoveredOf } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'recovered-heat',
  order: 320,
  title: 'Heat won back for each rack',
  group: 'heat',
  unit: 'J',
  derive: (scene) => scene.machines.filter(({ sheet }) => sheet.vent.kind === 'recovery').map((placed) => deriveReading(scene, placed)),
};

/** What is said of it. */
export interface RecoveredHeatMessages {
  'recovered-heat/ask-share': NoParams;
  'recovered-heat/cold-fed': NoParams;
}

const say = createMessages<RecoveredHeatMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const { vent, rinseWaterL, temperatures } = placed.sheet;
  if (vent.kind === 'recovery' && vent.recovered === null) {
    return askFor(subjects, say('recovered-heat/ask-share'), dataSheetPath(scene, placed, 'vent', 'recovered'));
  }
  const feed = needFeed(scene, placed);
  if ('ask' in feed) return feed.ask;
  const inputs = {
    supplyC: feed.feedC,
    rinseC: temperatures.rinseC,
    share: recoveredOf(placed),
    waterM3: toSI(rinseWaterL, 'L'),
  };
  return { subjects, ...compute(recoveredShareRecord, recoveredShare, inputs), notes: [say('recovered-heat/cold-fed')] };
}
