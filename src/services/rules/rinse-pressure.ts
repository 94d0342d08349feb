import type { Check, Measurement } from '../../checks';
import type { PlacedMachine, Scene } from '../../scene';
import { holdPressure } from '../support/holdPressure';
import { readingsFor } from '../support/machines';

export const check: Check = {
  id: 'rinse-pressure',
  title: 'Flow pressure at the stub',
  group: 'water',
  unit: 'Pa',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.113, within the data plate and 5 to 30 psi at the rinse valve; older codes 15 to 25 psi',
    confidence: 'read',
  },
  why: 'Too little pressure leaves plates unrinsed; too much breaks the spray into mist that cools before it meets them. The range counts at the rinse valve, so the stub is a first word only, for as long as what its line takes is not known. Where codes differ, the plan says which counts; the machine’s own plate goes before them.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** Once the pressure at the machine is known that is judged, in a check of its own, and the stub is not. That check asks for what is missing, too. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  if (readingsFor(scene, 'pressure-at-machine', placed).some(({ value }) => value !== null)) return [];
  return readingsFor(scene, 'rinse-flow-pressure', placed)
    .filter(({ value }) => value !== null)
    .flatMap((reading) => holdPressure(scene, placed, reading, 'at the stub'));
}
