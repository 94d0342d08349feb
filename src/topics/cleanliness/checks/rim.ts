import { pathOf } from '../../../plan';
import {
  type Check,
  createMessages,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameTable,
  printedLength,
  tablePlace,
} from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';
import { RIM_HEIGHT } from '../formulas/cleanlinessLimits';

const HEIGHT = lengthOf(RIM_HEIGHT);
/** Beside the 3 in UFGS prints 75 mm. */
const PRINTED = 75;

export const check: Check = {
  id: 'rim',
  order: 820,
  title: 'Dish tables keep their water in',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFGS 11400N',
    section: '2.4.2.4: front and ends turned up 3 in, with a rolled rim',
    confidence: 'read',
  },
  why: 'Water that runs over the edge wets the floor where people stand. It is a guide for military kitchens and good practice elsewhere.',
  measure: (scene) => scene.tables.filter(({ machine }) => machine !== null).map((table) => measureTable(scene, table)),
};

/** What is said of a rim. Heights in mm; 0 is none. */
export interface RimMessages {
  'rim/unknown': { table: Name };
  'rim/ask-height': NoParams;
  'rim/high-enough': { table: Name; height: number; wanted: number };
  'rim/too-low': { table: Name; height: number; wanted: number };
}

const say = createMessages<RimMessages>();

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { id, make } = placed.table;
  const wanted = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  return {
    subjects: [id],
    place: tablePlace(placed),
    value: make.rim,
    limit: wanted,
    severity: 'watch',
    ...(make.rim === null ? { ask: { input: say('rim/ask-height'), path: pathOf(scene.plan, 'tables', id, 'make', 'rim') } } : {}),
    message: sayRim(nameTable(scene, placed), make.rim, wanted),
  };
}

function sayRim(table: Name, height: number | null, wanted: number): Message {
  if (height === null) return say('rim/unknown', { table });
  return say(height >= wanted - 1e-6 ? 'rim/high-enough' : 'rim/too-low', { table, height, wanted });
}
