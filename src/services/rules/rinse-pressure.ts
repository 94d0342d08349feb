import type { Check } from '../../checks';
import { holdPressure } from '../support/holdPressure';
import { readingsFor } from '../support/machines';

export const check: Check = {
  id: 'rinse-pressure',
  title: 'Flow pressure of the rinse',
  group: 'water',
  unit: 'Pa',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.113, within the data plate and 5 to 30 psi; older codes 15 to 25 psi',
    confidence: 'read',
  },
  why: 'Too little pressure leaves plates unrinsed; too much breaks the spray into mist that cools before it meets them. Where codes differ, the plan says which counts; the machine’s own plate goes before them.',
  measure: (scene) =>
    scene.appliances.flatMap((placed) =>
      readingsFor(scene, 'rinse-flow-pressure', placed).flatMap((reading) => holdPressure(scene, placed, reading, 'at the stub')),
    ),
};
