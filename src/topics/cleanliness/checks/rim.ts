import { pathOf } from '../../../plan';
import { type Check, lengthOf, type Measurement, printedLength, sentence, tableName, tablePlace } from '../../../rules';
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

function measureTable(scene: Scene, placed: PlacedTable): Measurement {
  const { id, make } = placed.table;
  const height = printedLength(HEIGHT, PRINTED, scene.plan.settings.units);
  const name = tableName(scene, placed);
  return {
    subjects: [id],
    place: tablePlace(placed),
    value: make.rim,
    limit: height,
    severity: 'watch',
    ...(make.rim === null ? { ask: { input: 'height of the rim', path: pathOf(scene.plan, 'tables', id, 'make', 'rim') } } : {}),
    say: (f) => {
      if (make.rim === null) return `Say how high the rim of ${name} is.`;
      const has = `${name} has ${make.rim === 0 ? 'no rim' : `a rim of ${f.length(make.rim)}`}`;
      return sentence(
        make.rim >= height - 1e-6 ? `${has}; ${f.length(height)} is wanted.` : `${has}; ${f.length(height)} keeps the water on it.`,
      );
    },
  };
}
