import {
  type Check,
  createMessages,
  type FigureReading,
  type Measurement,
  type Name,
  nameTable,
  readFigure,
  tablePlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { findFarthestReach, type Reached } from '../figures/support/farthestReach';
import { rule as workingReachFigure } from '../figures/working-reach';
import { BODIES } from '../formulas/support/bodies';

/** 5th percentile woman, wall to the tip of the finger; and leaning. */
const REACH = BODIES['small-woman'].reachM * 1000;

export const check: Check = {
  id: 'reach-over-table',
  order: 750,
  title: 'Hands reach what they must over the table',
  group: 'people',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'MIL-STD-1472G, App. B, in NUREG-0700 Rev. 3',
    section: 'Table 11.4: functional reach, 5th percentile female',
    confidence: 'read',
  },
  why: 'Who leans over a table for every rack has a sore back at the end of the shift. It is the rack, the bowl and the shelf that are reached for, not the backsplash.',
  measure: (scene) => readFigure(workingReachFigure, scene).flatMap((reading) => measureTable(scene, reading)),
};

/** What is said of how far hands reach. Lengths in mm. */
export interface ReachOverTableMessages {
  'reach-over-table/within': { table: Name; reach: number; to: Reached; most: number };
  'reach-over-table/beyond': { table: Name; reach: number; to: Reached; missing: number };
}

const say = createMessages<ReachOverTableMessages>();

function measureTable(scene: Scene, { subjects, value }: FigureReading): Measurement[] {
  const table = scene.tables.find((item) => item.table.id === subjects[0]);
  if (table === undefined) return [];
  const reach = (value ?? 0) * 1000;
  const common = { table: nameTable(scene, table), reach, to: findFarthestReach(scene, table).to };
  return [
    {
      subjects,
      place: tablePlace(table),
      value: reach,
      limit: REACH,
      severity: 'watch',
      message:
        reach <= REACH + 1e-6
          ? say('reach-over-table/within', { ...common, most: REACH })
          : say('reach-over-table/beyond', { ...common, missing: reach - REACH }),
    },
  ];
}
