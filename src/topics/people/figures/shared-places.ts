import { distance } from '../../../geometry';
import { createMessages, type FigureReading, type FigureRule, measured } from '../../../rules';
import { findSharedFloor, type Line, type Scene } from '../../../scene';

export const rule: FigureRule = {
  id: 'shared-places',
  order: 900,
  title: 'Floor that soiled and clean ware share',
  group: 'people',
  unit: 'm',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

export interface SharedPlacesMessages {
  'shared-places/near': { places: number };
}

const say = createMessages<SharedPlacesMessages>();

/** A line without a soiled way, in a room without a clean one, shares nothing. */
function deriveLine({ plan, lines }: Scene, line: Line): FigureReading[] {
  if (line.ways.soiled.length < 2 || lines.every(({ ways }) => ways.clean.length < 2)) return [];
  const { rackSize, personWidth } = plan.settings;
  const shared = findSharedFloor(line, lines, Math.max(rackSize, personWidth));
  return [
    {
      subjects: [line.machine.machine.id],
      value: shared.reduce((sum, { a, b }) => sum + distance(a, b), 0) / 1000,
      how: HOW,
      notes: [say('shared-places/near', { places: shared.length })],
    },
  ];
}

const HOW = measured('L = sum of the stretches where one way comes nearer to the other than a rack or a person is wide', {
  text: 'Codex Alimentarius CXC 1-1969, 9.1.2: kept apart by distance or the flow of traffic',
  documents: ['codex-cxc-1'],
  confidence: 'secondary',
});
