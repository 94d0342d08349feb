import {
  areaPlace,
  type Check,
  type FigureReading,
  holdReading,
  type Measurement,
  readFigure,
  sentence,
  tableName,
  tablePlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as deckHeightFigure } from '../figures/deck-height';
import { workHeightBand } from '../formulas/support/workHeight';

/** Heavy work to light work of the bench heights: 28 to 37 in. Racks are both. */
const LOW = (workHeightBand('niosh-bench', 'heavy', 0).min ?? 0) * 1000;
const HIGH = (workHeightBand('niosh-bench', 'light', 0).max ?? 0) * 1000;

export const check: Check = {
  id: 'working-height',
  order: 760,
  title: 'Decks are at a height to work at',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'NIOSH 97-117, Elements of Ergonomics Programs',
    section: 'bench heights standing: 28 to 35 in for heavy work, 34 to 37 in for light work',
    confidence: 'secondary',
  },
  why: 'No height is law and the rules disagree; outside of all of them everybody stoops or lifts the shoulders. The machine’s track governs the deck at the joint.',
  measure: (scene) => readFigure(deckHeightFigure, scene).map((reading) => measureTable(scene, reading)),
};

function measureTable(scene: Scene, reading: FigureReading): Measurement {
  const table = scene.tables.find((item) => item.table.id === reading.subjects[0]);
  const name = table === undefined ? 'the table' : tableName(scene, table);
  const deckMm = reading.value === null ? null : reading.value * 1000;
  const isHigh = deckMm !== null && deckMm > (LOW + HIGH) / 2;
  return holdReading(
    { ...reading, value: deckMm },
    {
      place: table === undefined ? areaPlace() : tablePlace(table),
      name: `how high people work at ${name}`,
      limit: isHigh ? HIGH : LOW,
      relation: isHigh ? 'at-most' : 'at-least',
      severity: 'watch',
      say: (_, f) => {
        const height = sentence(`the deck of ${name} is at ${f.length(deckMm ?? 0)}`);
        const band = `${f.length(LOW)} to ${f.length(HIGH)}`;
        if (deckMm !== null && deckMm > HIGH + 1e-6) return `${height}; standing, people work at ${band}. Lower it, or give them a step.`;
        return deckMm !== null && deckMm < LOW - 1e-6
          ? `${height}; standing, people work at ${band}. Raise it.`
          : `${height}, within ${band}.`;
      },
    },
  );
}
