import { askFor, type FigureReading, type FigureRule, measured } from '../../../rules';
import { findStationWays, type Scene } from '../../../scene';
import { AISLE_WIDTH, EXIT_WIDTH, wayWidths } from '../../room';

export const rule: FigureRule = {
  id: 'station-way-width',
  order: 820,
  title: 'Widest way to each place of work',
  group: 'people',
  unit: 'm',
  derive: (scene) => (scene.lines.length === 0 ? [] : deriveWays(scene)),
};

/** One for each station that people walk to and each hand sink; one more for all of them while the carts are rolled out. */
function deriveWays(scene: Scene): FigureReading[] {
  const ways = findStationWays(scene, wayWidths(scene.plan.settings));
  if (ways === null) return [askFor([], 'door of the room', ['room', 'openings'])];
  const past = ways.flatMap(({ besideCarts }) => (besideCarts === null ? [] : [besideCarts.width / 1000]));
  return [
    ...ways.map(({ kind, subject, passage }) => ({ part: kind, subjects: [subject], value: passage.width / 1000, how: HOW, note: NOTE })),
    ...(past.length === 0 ? [] : [{ part: 'beside-carts', subjects: [], value: Math.min(...past), how: HOW, note: CARTS }]),
  ];
}

const HOW = measured(
  'w = the widest body that passes from a door or the operator to the place, over the free floor',
  ...EXIT_WIDTH.source,
  ...AISLE_WIDTH.source,
);

const NOTE = 'Past the leaves of open doors. Ways that are wide enough are not told apart.';
const CARTS = 'The narrowest of them while every cart with free floor before it is rolled out by its depth.';
