import {
  areaPlace,
  type Check,
  type FigureReading,
  holdReading,
  readFigure,
  readNote,
  sentence,
  tableName,
  tablePlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
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
  measure: (scene) => readFigure(workingReachFigure, scene).map((reading) => measureTable(scene, reading)),
};

function measureTable(scene: Scene, reading: FigureReading) {
  const table = scene.tables.find((item) => item.table.id === reading.subjects[0]);
  const name = table === undefined ? 'the table' : tableName(scene, table);
  const reachMm = (reading.value ?? 0) * 1000;
  return holdReading(
    { ...reading, value: reachMm },
    {
      place: table === undefined ? areaPlace() : tablePlace(table),
      name: `how far hands reach over ${name}`,
      limit: REACH,
      severity: 'watch',
      say: (_, f) => {
        const what = (readNote(reading) ?? '').replace(/\.$/, '').replace(/^To /, 'to ');
        const far = sentence(`at ${name} hands reach ${f.length(reachMm)}, ${what}`);
        return reachMm <= REACH + 1e-6
          ? `${far}; a person with a short reach has ${f.length(REACH)}.`
          : `${far}, ${f.length(reachMm - REACH)} more than a person with a short reach. Bring it nearer to the edge.`;
      },
    },
  );
}
