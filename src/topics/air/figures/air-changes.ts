import { askFor, compute, type FigureReading, type FigureRule, withSources } from '../../../rules';
import type { Scene } from '../../../scene';
import { airChanges, airChangesRecord } from '../formulas/airChanges';
import { KITCHEN_CHANGES, KITCHEN_SUPPLY_CHANGES } from '../formulas/airLimits';
import { needRoomFlows } from './support/roomAir';

export const rule: FigureRule = {
  id: 'air-changes',
  order: 510,
  title: 'Air changes of the room',
  group: 'air',
  unit: '1/h',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** What passes through the room is the greater of what is drawn out and what is blown in. */
function deriveRoom(scene: Scene): FigureReading {
  const flows = needRoomFlows(scene);
  if ('reading' in flows) return flows.reading;
  const { ceilingHeight, areaMm2 } = scene.room;
  if (ceilingHeight === null) return askFor([], 'ceiling height', ['room', 'ceilingHeight']);
  const airflowM3s = Math.max(flows.known.exhaustM3s, flows.known.makeUpM3s);
  const { how, ...answer } = compute(airChangesRecord, airChanges, { airflowM3s, volumeM3: (areaMm2 * ceilingHeight) / 1e9 });
  return { subjects: [], ...answer, how: withSources(how, ...KITCHEN_SUPPLY_CHANGES.source, ...KITCHEN_CHANGES.source), note: NOTE };
}

const NOTE = `For whole kitchens a hospital manual asks ${KITCHEN_SUPPLY_CHANGES.min} an hour or more of supply air, military criteria of 2004 ${KITCHEN_CHANGES.min} to ${KITCHEN_CHANGES.max}. It is not judged: the dish room is one part of them.`;
