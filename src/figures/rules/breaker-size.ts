import { breakerSize, breakerSizeRecord } from '../../engineering';
import type { Appliance } from '../../scene';
import { compute } from '../compute';
import { askVersion, circuitCurrent, POWER_CAUTION, versionOf } from '../support/power';
import { refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'breaker-size',
  title: 'Next standard breaker',
  group: 'power',
  unit: 'A',
  derive: (scene) => scene.appliances.map(deriveReading),
};

/** From the greater of the current that the data sheet states and the one computed from its power. */
function deriveReading(placed: Appliance): FigureReading {
  const version = versionOf(placed);
  if (version === undefined) return askVersion(placed);
  const subjects = [placed.machine.id];
  const current = circuitCurrent(version);
  if (!current.ok) return refuse(subjects, current.reason);
  const inputs = { currentA: current.value, load: 'continuous' as const };
  return { subjects, ...compute(breakerSizeRecord, breakerSize, inputs), note: `${CONTINUOUS} ${POWER_CAUTION}` };
}

const CONTINUOUS =
  'For 125 % of the current, as a continuous load: the sources do not settle whether a dish machine is one, and this is the stricter.';
