import { type Check, readingsFor } from '../../../rules';
import { rule as pressureAtMachineFigure } from '../figures/pressure-at-machine';
import { holdPressure } from './support/holdPressure';

export const check: Check = {
  id: 'pressure-at-machine',
  order: 290,
  title: 'Flow pressure that the water line leaves',
  group: 'water',
  unit: 'Pa',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.113, measured at the rinse valve; loss of the line by Hazen and Williams',
    confidence: 'read',
  },
  why: 'The code counts the pressure at the rinse valve. A long, thin or climbing line takes part of what the stub has while water flows.',
  measure: (scene) =>
    scene.machines.flatMap((placed) =>
      readingsFor(pressureAtMachineFigure, scene, placed).flatMap((reading) => holdPressure(scene, placed, reading, 'machine')),
    ),
};
