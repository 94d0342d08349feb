import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse, withSources } from '../../../rules';
import { type PlacedThing, type Scene, thingPath } from '../../../scene';
import { toSI } from '../../../units';
import { askBowls, bowlsOf, bowlVolume, heaterInput, heaterInputRecord } from '../../water';
import { MANUAL_SANITIZING } from '../formulas/temperatures';
import { waterTemperatureInput } from './support/heatAsks';

export const rule: FigureRule = {
  id: 'sanitizing-heater',
  order: 300,
  title: 'Heater at the sanitising bowl of the sink',
  group: 'heat',
  unit: 'W',
  derive: (scene) =>
    scene.things
      .filter(({ thing }) => thing.kind === 'three-compartment-sink' && thing.basins?.sanitizing !== 'chemical')
      .map((placed) => deriveReading(scene, placed)),
};

/** What is said of it. */
export interface SanitizingHeaterMessages {
  'sanitizing-heater/ask-way': NoParams;
  'sanitizing-heater/one-filling': NoParams;
}

const say = createMessages<SanitizingHeaterMessages>();

/** From the hot water of the room to what ware by hand is sanitised in. */
function deriveReading({ plan }: Scene, placed: PlacedThing): FigureReading {
  const { thing } = placed;
  const subjects = [thing.id];
  const found = bowlsOf(thing);
  if (thing.basins === null || thing.basins.sanitizing === null) {
    if (thing.basins === null) return askBowls(placed, null);
    return askFor(subjects, say('sanitizing-heater/ask-way'), thingPath(placed, 'basins', 'sanitizing'));
  }
  if (!('bowls' in found)) return askBowls(placed, found.missing);
  const { hotWaterC } = plan.supply;
  if (hotWaterC === null) return askFor(subjects, waterTemperatureInput('hot'), ['supply', 'hotWaterC']);
  const volume = bowlVolume(found.bowls);
  if (!volume.ok) return refuse(subjects, volume.refusal);
  const riseK = Math.max(0, (MANUAL_SANITIZING.min ?? Number.NaN) - hotWaterC);
  const answer = compute(heaterInputRecord, heaterInput, { demandM3S: toSI(volume.value, 'm3/h'), riseK, rule: 'electric-98' });
  return { subjects, ...answer, how: withSources(answer.how, ...MANUAL_SANITIZING.source), notes: [say('sanitizing-heater/one-filling')] };
}
