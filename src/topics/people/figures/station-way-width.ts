import { askFor, createMessages, type FigureReading, type FigureRule, measured, type NoParams } from '../../../rules';
import { findStationWays, type Scene } from '../../../scene';
import { AISLE_WIDTH, EXIT_WIDTH, ROOM_DOOR, wayWidths } from '../../room';

export const rule: FigureRule = {
  id: 'station-way-width',
  order: 820,
  title: 'Widest way to each place of work',
  group: 'people',
  unit: 'm',
  derive: (scene) => (scene.lines.length === 0 ? [] : deriveWays(scene)),
};

export interface StationWayWidthMessages {
  'station-way-width/past-doors': NoParams;
  'station-way-width/beside-carts': NoParams;
}

const say = createMessages<StationWayWidthMessages>();

/** One for each station that people walk to and each hand sink; one more for all of them while the carts are rolled out. */
function deriveWays(scene: Scene): FigureReading[] {
  const ways = findStationWays(scene, wayWidths(scene.plan.settings));
  if (ways === null) return [askFor([], ROOM_DOOR, ['room', 'openings'])];
  const past = ways.flatMap(({ besideCarts }) => (besideCarts === null ? [] : [besideCarts.width / 1000]));
  return [
    ...ways.map(({ kind, subject, passage }) => ({ part: kind, subjects: [subject], value: passage.width / 1000, how: HOW, notes: NOTES })),
    ...(past.length === 0 ? [] : [{ part: 'beside-carts', subjects: [], value: Math.min(...past), how: HOW, notes: CARTS }]),
  ];
}

const HOW = measured(
  'w = the widest body that passes from a door or the operator to the place, over the free floor',
  ...EXIT_WIDTH.source,
  ...AISLE_WIDTH.source,
);

const NOTES = [say('station-way-width/past-doors')];
const CARTS = [say('station-way-width/beside-carts')];
