import { compute, createMessages, type FigureReading, type FigureRule, withSources } from '../../../rules';
import type { Scene } from '../../../scene';
import { airChanges, airChangesRecord } from '../formulas/airChanges';
import { KITCHEN_CHANGES, KITCHEN_SUPPLY_CHANGES } from '../formulas/airLimits';
import { askCeilingHeight } from './support/airAsks';
import { needRoomFlows } from './support/roomAir';

export const rule: FigureRule = {
  id: 'air-changes',
  order: 510,
  title: 'Air changes of the room',
  group: 'air',
  unit: '1/h',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** Air changes an hour. */
export interface AirChangesMessages {
  'air-changes/whole-kitchens': { supplyLeast: number; least: number; most: number };
}

const say = createMessages<AirChangesMessages>();

/** What passes through the room is the greater of what is drawn out and what is blown in. */
function deriveRoom(scene: Scene): FigureReading {
  const flows = needRoomFlows(scene);
  if ('reading' in flows) return flows.reading;
  const { ceilingHeight, areaMm2 } = scene.room;
  if (ceilingHeight === null) return askCeilingHeight();
  const airflowM3s = Math.max(flows.known.exhaustM3s, flows.known.makeUpM3s);
  const { how, ...answer } = compute(airChangesRecord, airChanges, { airflowM3s, volumeM3: (areaMm2 * ceilingHeight) / 1e9 });
  return { subjects: [], ...answer, how: withSources(how, ...KITCHEN_SUPPLY_CHANGES.source, ...KITCHEN_CHANGES.source), notes: NOTES };
}

const NOTES = [
  say('air-changes/whole-kitchens', {
    supplyLeast: KITCHEN_SUPPLY_CHANGES.min ?? 0,
    least: KITCHEN_CHANGES.min ?? 0,
    most: KITCHEN_CHANGES.max ?? 0,
  }),
];
