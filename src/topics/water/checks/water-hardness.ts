import {
  type Bound,
  type Check,
  createMessages,
  governing,
  holdReading,
  isOver,
  isUnder,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  readFigure,
  type Source,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as waterHardnessFigure } from '../figures/water-hardness';
import { SUPPLY_HARDNESS } from '../formulas/hardness';

const SOURCE: Source = {
  kind: 'published',
  document: 'UFC 4-750-01NF (16 Apr 2004)',
  section: '6-2.3.2: softener above 6 grains a gallon; below 2 can hurt some equipment',
  confidence: 'read',
};

export const check: Check = {
  id: 'water-hardness',
  order: 320,
  title: 'Hardness of the water',
  group: 'water',
  unit: 'kg/m3',
  relation: 'at-most',
  source: SOURCE,
  why: 'Hard water leaves scale on heaters, nozzles and ware: the booster heats slower and the rinse sprays less. Design guides bound it; the machine’s own sheet may be stricter.',
  measure: (scene) => readFigure(waterHardnessFigure, scene).map((reading) => measureHardness(scene, reading)),
};

/** What is said of the hardness, in kg/m³. */
export interface WaterHardnessMessages {
  'water-hardness/what': NoParams;
  'water-hardness/within': { hardness: number; least: number; most: number };
  'water-hardness/too-hard': { hardness: number; most: number };
  'water-hardness/too-soft': { hardness: number; least: number };
}

const message = createMessages<WaterHardnessMessages>();

const BOUNDS: readonly Bound[] = [
  { value: SUPPLY_HARDNESS.max ?? Number.NaN, relation: 'at-most', by: 'the guide', source: SOURCE },
  { value: SUPPLY_HARDNESS.min ?? Number.NaN, relation: 'at-least', by: 'the guide', source: SOURCE },
];

function measureHardness({ machines }: Scene, reading: Parameters<typeof holdReading>[0]): Measurement {
  const bound = governing(BOUNDS, reading.value);
  return holdReading(reading, {
    place: machinesPlace({ machines }),
    what: message('water-hardness/what'),
    limit: bound?.value ?? null,
    ...(bound === undefined ? {} : { relation: bound.relation }),
    severity: 'watch',
    message: messageOf,
  });
}

function messageOf(hardness: number): Message {
  const [most, least] = BOUNDS.map((bound) => bound.value) as [number, number];
  if (isOver(hardness, most)) return message('water-hardness/too-hard', { hardness, most });
  return isUnder(hardness, least)
    ? message('water-hardness/too-soft', { hardness, least })
    : message('water-hardness/within', { hardness, least, most });
}
