import {
  type Bound,
  type Check,
  governing,
  holdReading,
  isOver,
  isUnder,
  type Measurement,
  machinesPlace,
  readFigure,
  type Source,
} from '../../../rules';
import type { Scene } from '../../../scene';
import type { Formatter } from '../../../units';
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

const BOUNDS: readonly Bound[] = [
  { value: SUPPLY_HARDNESS.max ?? Number.NaN, relation: 'at-most', by: 'the guide', source: SOURCE },
  { value: SUPPLY_HARDNESS.min ?? Number.NaN, relation: 'at-least', by: 'the guide', source: SOURCE },
];

function measureHardness({ machines }: Scene, reading: Parameters<typeof holdReading>[0]): Measurement {
  const bound = governing(BOUNDS, reading.value);
  return holdReading(reading, {
    place: machinesPlace({ machines }),
    name: 'whether the water needs a softener',
    limit: bound?.value ?? null,
    ...(bound === undefined ? {} : { relation: bound.relation }),
    severity: 'watch',
    say: sayHardness,
  });
}

function sayHardness(value: number, f: Formatter): string {
  const [most, least] = BOUNDS.map((bound) => bound.value) as [number, number];
  if (isOver(value, most))
    return `The water has ${f.hardness(value)} of hardness and design guides take ${f.hardness(most)} at most: put a softener before the machine, or delime it often.`;
  if (isUnder(value, least))
    return `The water has ${f.hardness(value)} of hardness, under ${f.hardness(least)}: so soft it can hurt some equipment; ask the machine’s maker.`;
  return `The water has ${f.hardness(value)} of hardness, within ${f.hardness(least)} to ${f.hardness(most)}: no softener is needed.`;
}
