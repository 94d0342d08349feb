import { createMessages, type FigureReading, type FigureRule, measured } from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';
import { BODIES_SOURCE } from '../formulas/support/bodies';
import { findFarthestReach, type Reached } from './support/farthestReach';

export const rule: FigureRule = {
  id: 'working-reach',
  order: 860,
  title: 'Farthest that hands reach over the table',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.tables.map((table) => deriveTable(scene, table)),
};

export interface WorkingReachMessages {
  'working-reach/to': { to: Reached };
}

const say = createMessages<WorkingReachMessages>();

function deriveTable(scene: Scene, placed: PlacedTable): FigureReading {
  const { reach, to } = findFarthestReach(scene, placed);
  return { subjects: [placed.table.id], value: reach / 1000, how: HOW, notes: [say('working-reach/to', { to })] };
}

const HOW = measured('r = from the operator’s edge to the farthest that hands must come', BODIES_SOURCE);
