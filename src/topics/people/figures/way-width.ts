import { askFor, createMessages, type FigureReading, type FigureRule, measured, type NoParams } from '../../../rules';
import { findWidestWay, type Line, type Scene } from '../../../scene';
import { AISLE_WIDTH, EXIT_WIDTH, ROOM_DOOR, wayWidths } from '../../room';

export const rule: FigureRule = {
  id: 'way-width',
  order: 810,
  title: 'Widest way to the operator’s place',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

export interface WayWidthMessages {
  'way-width/enough': NoParams;
  'way-width/narrowest': NoParams;
}

const say = createMessages<WayWidthMessages>();

/** Where there is no place to stand there is no way to it. */
function deriveLine(scene: Scene, line: Line): FigureReading[] {
  if (line.stand === null) return [];
  const subjects = [line.machine.machine.id];
  const { enough } = wayWidths(scene.plan.settings);
  const way = findWidestWay(scene, line, enough);
  if (way === null) return [askFor(subjects, ROOM_DOOR, ['room', 'openings'])];
  const isWide = way.aisle.width >= enough - 1e-6;
  return [
    { part: 'door', subjects, value: way.door / 1000, how: HOW },
    {
      part: 'aisle',
      subjects,
      value: Math.min(way.aisle.width, enough) / 1000,
      how: HOW,
      notes: [say(isWide ? 'way-width/enough' : 'way-width/narrowest')],
    },
  ];
}

const HOW = measured(
  'w = the widest body that passes from a door to the place, over the free floor',
  ...EXIT_WIDTH.source,
  ...AISLE_WIDTH.source,
);
