import type { Plan } from '../../../plan';
import {
  type Check,
  createMessages,
  editTable,
  lengthOf,
  type Measurement,
  type Name,
  nameTable,
  type Offer,
  printedLength,
  tablePlace,
} from '../../../rules';
import type { PlacedTable, Scene } from '../../../scene';
import { BACKSPLASH_HEIGHT } from '../formulas/cleanlinessLimits';

const HEIGHT = lengthOf(BACKSPLASH_HEIGHT);
/** Beside the 10 in UFGS prints 250 mm. */
const PRINTED = 250;

export const check: Check = {
  id: 'backsplash',
  order: 810,
  title: 'Dish tables have a backsplash',
  group: 'sanitary',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFGS 11400N',
    section: '2.4.2.4: 10 in high, coved, its top turned back and its ends closed',
    confidence: 'read',
  },
  why: 'Spray and splash run down the wall behind a table that has none, and into the joint. The pre-rinse spray is fixed to it (UFGS 11400A, 2.4.2.3). It is a guide for military kitchens and good practice elsewhere.',
  measure: (scene) => scene.tables.filter(({ machine }) => machine !== null).map((table) => measureTable(scene, table)),
};

/** What is said of a backsplash. Heights in mm; 0 is none. */
export interface BacksplashMessages {
  'backsplash/high-enough': { table: Name; height: number; wanted: number };
  'backsplash/too-low': { table: Name; height: number; wanted: number };
  'backsplash/repair-raise-backsplash': { table: Name; wanted: number };
}

const say = createMessages<BacksplashMessages>();

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { id, backsplash } = placed.table;
  const wanted = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  const table = nameTable(scene, placed);
  const isHigh = backsplash >= wanted - 1e-6;
  return {
    subjects: [id],
    place: tablePlace(placed),
    value: backsplash,
    limit: wanted,
    severity: 'watch',
    message: say(isHigh ? 'backsplash/high-enough' : 'backsplash/too-low', { table, height: backsplash, wanted }),
    ...(isHigh ? {} : { repairs: offerRaise(id, table, wanted) }),
  };
}

function offerRaise(id: string, table: Name, wanted: number): Offer {
  const repair = {
    id: `raise-backsplash-${id}`,
    label: say('backsplash/repair-raise-backsplash', { table, wanted }),
    edit: (draft: Plan) =>
      editTable(draft, id, (item) => {
        item.backsplash = wanted;
      }),
  };
  return { ids: [repair.id], find: () => [repair] };
}
