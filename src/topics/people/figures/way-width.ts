import { askFor, type FigureReading, type FigureRule, measured } from '../../../rules';
import { findWidestWay, type Line, type Scene } from '../../../scene';
import { AISLE_WIDTH, EXIT_WIDTH, wayWidths } from '../../room';

export const rule: FigureRule = {
  id: 'way-width',
  order: 810,
  title: 'Widest way to the operator’s place',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

/** Where there is no place to stand there is no way to it. */
function deriveLine(scene: Scene, line: Line): FigureReading[] {
  if (line.stand === null) return [];
  const subjects = [line.machine.machine.id];
  const { enough } = wayWidths(scene.plan.settings);
  const way = findWidestWay(scene, line, enough);
  if (way === null) return [askFor(subjects, 'door of the room', ['room', 'openings'])];
  const isWide = way.aisle.width >= enough - 1e-6;
  return [
    { part: 'door', subjects, value: way.door / 1000, how: HOW },
    {
      part: 'aisle',
      subjects,
      value: Math.min(way.aisle.width, enough) / 1000,
      how: HOW,
      note: isWide ? 'This wide or wider: ways that are wide enough are not told apart.' : 'At its narrowest place.',
    },
  ];
}

const HOW = measured(
  'w = the widest body that passes from a door to the place, over the free floor',
  ...EXIT_WIDTH.source,
  ...AISLE_WIDTH.source,
);
