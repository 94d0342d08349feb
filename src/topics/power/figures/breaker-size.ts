import type { Codes } from '../../../plan';
import { compute, createMessages, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { breakerSize, breakerSizeRecord, type LoadKind } from '../formulas/breakerSize';
import { askVersion, circuitCurrent, POWER_CAUTION, versionOf } from './support/power';

export const rule: FigureRule = {
  id: 'breaker-size',
  order: 690,
  title: 'Next standard breaker',
  group: 'power',
  unit: 'A',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface BreakerSizeFigureMessages {
  'breaker-size/for-load': Pick<Codes, 'load'>;
}

const say = createMessages<BreakerSizeFigureMessages>();

/** From the greater of the current that the data sheet states and the one computed from its power. */
function deriveReading({ plan }: Scene, placed: PlacedMachine): FigureReading {
  const version = versionOf(placed);
  if (version === undefined) return askVersion(placed);
  const subjects = [placed.machine.id];
  const current = circuitCurrent(version);
  if (!current.ok) return refuse(subjects, current.refusal);
  const { load } = plan.codes;
  const inputs = { currentA: current.value, load: loadOf(load) };
  return { subjects, ...compute(breakerSizeRecord, breakerSize, inputs), notes: [say('breaker-size/for-load', { load }), POWER_CAUTION] };
}

/** The stricter: a load that lasts. */
const loadOf = (load: Codes['load']): LoadKind => (load === 'strictest' ? 'continuous' : load);
