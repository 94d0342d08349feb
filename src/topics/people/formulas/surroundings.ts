import { type Entries, type FormulaSource, feet, type Limit, limit } from '../../../rules';
import { toSI } from '../../../units';

const read = (text: string): FormulaSource => ({ text, confidence: 'read' });

const restated = (text: string): FormulaSource => ({ text, confidence: 'secondary' });

/** Light where ware is washed, 30 in above the floor. Codes round 20 fc to 220 lx; the footcandles count. */
export const LIGHT_WASHING: Limit = limit(
  'light-washing',
  'Light where ware is washed',
  'lx',
  { min: toSI(20, 'fc') },
  restated('FDA Food Code 6-303.11 (L-45)'),
);

export const LIGHT_UTENSILS: Limit = limit(
  'light-utensils',
  'Light where utensils are worked with',
  'lx',
  { min: toSI(50, 'fc') },
  read('Sonoma County CA, floor plan and lighting guidelines (L-46)'),
);

export const LIGHT_MILITARY: Limit = limit(
  'light-military',
  'Light in a military kitchen',
  'lx',
  { min: toSI(70, 'fc'), max: toSI(100, 'fc') },
  read('UFC 4-750-01NF (16 Apr 2004), 4-4.2 (L-47)'),
);

/** Law in Washington, New York City and Nevada, no rule of the food code. */
export const HAND_SINK_DISTANCE: Limit = limit(
  'hand-sink-distance',
  'Way to a hand sink, where law sets one',
  'm',
  { max: feet(25) },
  read('WAC 246-215-09225, temporary establishments (L-49)'),
  restated('WAC 246-215-05255, NYC §81.21, NAC 446.581 (L-49)'),
);

/** What a programme gives such a room, to compare with: it is no rule. */
export const DISH_ROOM_AREA: Limit = limit(
  'dish-room-area',
  'Dish room of a military school, in a programme of space',
  'm2',
  { min: 300 * feet(1) ** 2 },
  read('Military-school educational specification, Food Service, 15 Nov 2011 (L-35)'),
);

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 660, limits: [LIGHT_WASHING, LIGHT_UTENSILS, LIGHT_MILITARY, HAND_SINK_DISTANCE, DISH_ROOM_AREA] },
];
