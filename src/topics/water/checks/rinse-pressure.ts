import { type Check, type Measurement, readingsFor } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as pressureAtMachineFigure } from '../figures/pressure-at-machine';
import { rule as rinseFlowPressureFigure } from '../figures/rinse-flow-pressure';
import { holdPressure } from './support/holdPressure';

export const check: Check = {
  id: 'rinse-pressure',
  order: 280,
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
  if (readingsFor(pressureAtMachineFigure, scene, placed).some(({ value }) => value !== null)) return [];
  return readingsFor(rinseFlowPressureFigure, scene, placed)
    .filter(({ value }) => value !== null)
    .flatMap((reading) => holdPressure(scene, placed, reading, 'stub'));
}
