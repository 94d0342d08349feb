import { voltsToGround, WORKING_CONDITIONS, workingDepth, workingDepthRecord } from '../../engineering';
import type { PlacedThing, Scene } from '../../scene';
import { compute } from '../compute';
import { POWER_CAUTION } from '../support/power';
import { askFor, refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'working-depth',
  title: 'Free depth before the panel board',
  group: 'power',
  unit: 'm',
  derive: (scene) => scene.things.filter(({ thing }) => thing.kind === 'panel-board').flatMap((panel) => deriveReadings(scene, panel)),
};

/** One for each of what may stand opposite: `A` nothing live or earthed, `B` something earthed, `C` live parts. */
function deriveReadings({ plan }: Scene, { thing }: PlacedThing): FigureReading[] {
  const subjects = [thing.id];
  const { voltage } = plan.supply;
  if (voltage === null) return [askFor(subjects, 'voltage of the supply', ['supply', 'voltage'])];
  const toGround = voltsToGround({ voltageV: voltage, supply: 'other' });
  if (!toGround.ok) return [refuse(subjects, toGround.reason)];
  return WORKING_CONDITIONS.map((condition) => ({
    part: condition,
    subjects,
    ...compute(workingDepthRecord, workingDepth, { voltsToGround: toGround.value, condition }),
    note: `${OPPOSITE[condition]} ${WHOLE_VOLTAGE} ${POWER_CAUTION}`,
  }));
}

const OPPOSITE = {
  A: 'Nothing live and nothing earthed opposite.',
  B: 'Something earthed opposite; concrete, brick and tile count as earthed.',
  C: 'Live parts on both sides.',
} as const;

const WHOLE_VOLTAGE =
  'How the supply is earthed is not known, so the whole voltage counts, the stricter; from a star point 208 V are 120 V to ground.';
