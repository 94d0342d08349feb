import { distance } from '../../../geometry';
import { type FigureReading, type FigureRule, measured } from '../../../rules';
import { findSharedFloor, type Line, type Scene } from '../../../scene';

export const rule: FigureRule = {
  id: 'shared-places',
  order: 900,
  title: 'Floor that soiled and clean ware share',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

/** A line without a soiled way, in a room without a clean one, shares nothing. */
function deriveLine({ plan, lines }: Scene, line: Line): FigureReading[] {
  if (line.ways.soiled.length < 2 || lines.every(({ ways }) => ways.clean.length < 2)) return [];
  const { rackSize, personWidth } = plan.settings;
  const shared = findSharedFloor(line, lines, Math.max(rackSize, personWidth));
  const places = shared.length === 1 ? 'At 1 place' : `At ${shared.length} places`;
  return [
    {
      subjects: [line.machine.machine.id],
      value: shared.reduce((sum, { a, b }) => sum + distance(a, b), 0) / 1000,
      how: HOW,
      note: `${shared.length === 0 ? 'Nowhere' : places} nearer to each other than a rack or a person is wide; where both come to the machine they merely meet.`,
    },
  ];
}

const HOW = measured('L = sum of the stretches where one way comes nearer to the other than a rack or a person is wide', {
  text: 'Codex Alimentarius CXC 1-1969, 9.1.2: kept apart by distance or the flow of traffic',
  documents: ['codex-cxc-1'],
  confidence: 'secondary',
});
