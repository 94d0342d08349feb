import { type Entries, type FormulaSource, feet, type Limit, limit, type SourceKey } from '../../../rules';
import { toSI } from '../../../units';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const restated = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'secondary' });

/** Light where ware is washed, 30 in above the floor. Codes round 20 fc to 220 lx; the footcandles count. */
export const LIGHT_WASHING: Limit = limit(
  'light-washing',
  'Light where ware is washed',
  'lx',
  { min: toSI(20, 'fc') },
  restated('FDA Food Code 6-303.11', 'fda-food-code'),
);

export const LIGHT_UTENSILS: Limit = limit(
  'light-utensils',
  'Light where utensils are worked with',
  'lx',
  { min: toSI(50, 'fc') },
  read('Sonoma County CA, floor plan and lighting guidelines', 'sonoma-county'),
);

export const LIGHT_MILITARY: Limit = limit(
  'light-military',
  'Light in a military kitchen',
  'lx',
  { min: toSI(70, 'fc'), max: toSI(100, 'fc') },
  read('UFC 4-750-01NF (16 Apr 2004), 4-4.2', 'ufc-4-750-01nf'),
);

/** Law in Washington, New York City and Nevada, no rule of the food code. */
export const HAND_SINK_DISTANCE: Limit = limit(
  'hand-sink-distance',
  'Way to a hand sink, where law sets one',
  'm',
  { max: feet(25) },
  read('WAC 246-215-09225, temporary establishments', 'wac-246-215'),
  restated('WAC 246-215-05255, NYC §81.21, NAC 446.581', 'wac-246-215', 'nac-446', 'nyc-health-code-81'),
);

/** What a programme gives such a room, to compare with: it is no rule. */
export const DISH_ROOM_AREA: Limit = limit(
  'dish-room-area',
  'Dish room of a military school, in a programme of space',
  'm2',
  { min: 300 * feet(1) ** 2 },
  read('Military-school educational specification, Food Service, 15 Nov 2011', 'military-school-programme'),
);

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 660, limits: [LIGHT_WASHING, LIGHT_UTENSILS, LIGHT_MILITARY, HAND_SINK_DISTANCE, DISH_ROOM_AREA] },
];
