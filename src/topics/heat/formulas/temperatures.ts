import { type Band, type Entries, type FormulaSource, type Judgement, judge, type Limit, limit, type SourceKey } from '../../../rules';
import { toSI } from '../../../units';

/** Classes of machines that the food code tells apart for the temperature of its water. */
export const MACHINE_CLASSES = ['stationary-single', 'stationary-dual', 'conveyor-single-tank', 'conveyor-multi-tank'] as const;
export type MachineClass = (typeof MACHINE_CLASSES)[number];
export type Sanitizing = 'hot-water' | 'chemical';

const f = (value: number) => toSI(value, 'F');
const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const WASH = read('FDA Food Code 4-501.110 as WAC 246-215-04545 and 16 Del. Admin. Code 4-501.110', 'fda-food-code', 'wac-246-215');
const wash = (id: string, title: string, minF: number) => limit(`wash-${id}`, `Wash, ${title}`, 'C', { min: f(minF) }, WASH);

const HOT_WASH: Readonly<Record<MachineClass, Limit>> = {
  'stationary-single': wash('stationary-single', 'stationary rack, single temperature', 165),
  'stationary-dual': wash('stationary-dual', 'stationary rack, dual temperature', 150),
  'conveyor-single-tank': wash('conveyor-single-tank', 'single-tank conveyor, dual temperature', 160),
  'conveyor-multi-tank': wash('conveyor-multi-tank', 'multi-tank conveyor', 150),
};
const CHEMICAL_WASH = wash('chemical', 'chemical sanitizing', 120);

/** Temperature that the wash must have. The data plate may ask for more. */
export const washLimit = (machine: MachineClass, sanitizing: Sanitizing): Limit =>
  sanitizing === 'chemical' ? CHEMICAL_WASH : HOT_WASH[machine];

const MANIFOLD = read('FDA Food Code 4-501.112 as WAC 246-215-04555, in force 2022-03-01', 'fda-food-code', 'wac-246-215');
const SINGLE_MANIFOLD = limit(
  'manifold-single',
  'Final rinse at the manifold, single temperature',
  'C',
  { min: f(165), max: f(194) },
  MANIFOLD,
);
const OTHER_MANIFOLD = limit('manifold', 'Final rinse at the manifold', 'C', { min: f(180), max: f(194) }, MANIFOLD);

/** Temperature of a hot-water final rinse at the manifold: above 194 °F the water turns to steam before it reaches the plates. */
export const manifoldLimit = (machine: MachineClass): Limit => (machine === 'stationary-single' ? SINGLE_MANIFOLD : OTHER_MANIFOLD);

export const UTENSIL_SURFACE: Limit = limit(
  'utensil-surface',
  'Surface of the dishes after a hot-water rinse',
  'C',
  { min: f(160) },
  read('FDA Food Code 4-703.11(B) as Minnesota Rules 4626.0905', 'fda-food-code', 'minnesota-4626'),
);
export const MANUAL_SANITIZING: Limit = limit(
  'manual-sanitizing',
  'Hot water for sanitizing by hand',
  'C',
  { min: f(171) },
  read('FDA Food Code 4-501.111 as WAC 246-215-04550', 'fda-food-code', 'wac-246-215'),
);
export const MANUAL_SANITIZING_TIME: Limit = limit(
  'manual-sanitizing-time',
  'Time in hot water, by hand',
  's',
  { min: 30 },
  read('Minnesota Rules 4626.0905', 'minnesota-4626'),
);
/** Food code of 2017, as some states have it, asks for more than that of 2022. */
export const HAND_SINK_2017: Limit = limit(
  'hand-sink-water',
  'Water at a hand sink',
  'C',
  { min: f(100) },
  read('WAC 246-215-05210, in force 2022-03-01', 'wac-246-215'),
);
export const HAND_SINK_2022: Limit = limit(
  'hand-sink-water-later',
  'Water at a hand sink, later code',
  'C',
  { min: f(85) },
  {
    text: 'FDA Food Code 2022, 5-202.12, in a public copy',
    documents: ['fda-food-code'],
    confidence: 'secondary',
  },
);
export const SUPPLY_WATER: Limit = limit(
  'supply-water',
  'Hot supply to a dish machine',
  'C',
  { min: f(140) },
  read('UFC 4-750-01NF (16 Apr 2004), 6-2.3.2', 'ufc-4-750-01nf'),
);

/**
 * How a reading of the final rinse at the manifold stands to the rule. The plate's own minimum counts where it is
 * higher; a temperature on a plate is a minimum unless it shows a range (CDC VSP 2018, 13.16.2.2).
 */
export function judgeManifold(machine: MachineClass, readingC: number, plate: Band | null = null): Judgement {
  const byRule = judge(manifoldLimit(machine), readingC);
  return byRule !== 'pass' || plate === null ? byRule : judge(plate, readingC);
}

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 340,
    limits: [
      ...Object.values(HOT_WASH),
      CHEMICAL_WASH,
      SINGLE_MANIFOLD,
      OTHER_MANIFOLD,
      UTENSIL_SURFACE,
      MANUAL_SANITIZING,
      MANUAL_SANITIZING_TIME,
      HAND_SINK_2017,
      HAND_SINK_2022,
      SUPPLY_WATER,
    ],
  },
];
