import type { Check } from '../../checks';
import { holdPressure } from '../support/holdPressure';
import { readingsFor } from '../support/machines';

export const check: Check = {
  id: 'pressure-at-machine',
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
      readingsFor(scene, 'pressure-at-machine', placed).flatMap((reading) => holdPressure(scene, placed, reading, 'at the machine')),
    ),
};
