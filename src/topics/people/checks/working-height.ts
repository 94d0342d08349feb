import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Message,
  type Name,
  nameTable,
  readFigure,
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
  measure: (scene) => readFigure(deckHeightFigure, scene).flatMap((reading) => measureTable(scene, reading)),
};

/** What is said of the height of a deck. Lengths in mm. */
export interface WorkingHeightMessages {
  'working-height/what': { table: Name };
  'working-height/high': Height;
  'working-height/low': Height;
  'working-height/within': Height;
}

/** The height of the deck, and the band that people work at. */
interface Height {
  table: Name;
  height: number;
  from: number;
  to: number;
}

const say = createMessages<WorkingHeightMessages>();

function measureTable(scene: Scene, reading: FigureReading): Measurement[] {
  const placed = scene.tables.find((item) => item.table.id === reading.subjects[0]);
  if (placed === undefined) return [];
  const table = nameTable(scene, placed);
  const deckMm = reading.value === null ? null : reading.value * 1000;
  const isHigh = deckMm !== null && deckMm > (LOW + HIGH) / 2;
  return [
    holdReading(
      { ...reading, value: deckMm },
      {
        place: tablePlace(placed),
        what: say('working-height/what', { table }),
        limit: isHigh ? HIGH : LOW,
        relation: isHigh ? 'at-most' : 'at-least',
        severity: 'watch',
        message: (height) => sayHeight({ table, height, from: LOW, to: HIGH }),
      },
    ),
  ];
}

function sayHeight(height: Height): Message {
  if (height.height > HIGH + 1e-6) return say('working-height/high', height);
  return say(height.height < LOW - 1e-6 ? 'working-height/low' : 'working-height/within', height);
}
