import { type Check, lengthOf, type Measurement, printedLength, sentence, tableName, tablePlace } from '../../../rules';
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

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { id, backsplash } = placed.table;
  const height = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  const name = tableName(scene, placed);
  const isHigh = backsplash >= height - 1e-6;
  return {
    subjects: [id],
    place: tablePlace(placed),
    value: backsplash,
    limit: height,
    severity: 'watch',
    say: (f) => {
      const has = backsplash === 0 ? 'has no backsplash' : `has a backsplash of ${f.length(backsplash)}`;
      return sentence(
        isHigh ? `${name} ${has}; ${f.length(height)} is wanted.` : `${name} ${has}; ${f.length(height)} keeps splash off the wall.`,
      );
    },
    repairs: () =>
      isHigh
        ? []
        : [
            {
              id: `raise-backsplash-${id}`,
              label: (f) => `Make the backsplash of ${name} ${f.length(height)} high`,
              edit: (draft) => {
                for (const table of draft.tables) if (table.id === id) table.backsplash = height;
              },
            },
          ],
  };
}
