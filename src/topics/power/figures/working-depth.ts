import { askFor, compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedThing, Scene } from '../../../scene';
import { WORKING_CONDITIONS, type WorkingCondition, workingDepth, workingDepthRecord } from '../formulas/workingSpace';
import { POWER_CAUTION } from './support/power';
import { depthsNeeded, TO_GROUND, type ToGround, toGroundOf } from './support/toGround';

export const rule: FigureRule = {
  id: 'working-depth',
  order: 720,
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
  const volts = toGroundOf(plan, voltage);
  if (!volts.ok) return [refuse(subjects, volts.refusal)];
  const earthing = plan.supply.toGroundV === null ? ANY_EARTHING : AS_STATED;
  return WORKING_CONDITIONS.map((condition) => ({
    part: condition,
    ...depthAt(subjects, volts.value, condition),
    note: `${OPPOSITE[condition]} ${earthing} ${POWER_CAUTION}`,
  }));
}

/** Where the voltage to ground decides, and is not known, it is asked for. */
function depthAt(subjects: string[], volts: ToGround, condition: WorkingCondition): FigureReading {
  const depths = depthsNeeded(volts, condition);
  if (!depths.ok) return refuse(subjects, depths.refusal);
  if (depths.value.least !== depths.value.most) return askFor(subjects, TO_GROUND.input, TO_GROUND.path);
  return { subjects, ...compute(workingDepthRecord, workingDepth, { voltsToGround: volts.mostV, condition }) };
}

const OPPOSITE = {
  A: 'Nothing live and nothing grounded opposite.',
  B: 'Something grounded opposite; concrete, brick and tile count as grounded.',
  C: 'Live parts on both sides.',
} as const;

const AS_STATED =
  'For the voltage to ground that the plan states: a 120/208 V supply from a star point is 120 V to ground, one of 277/480 V 277 V.';
const ANY_EARTHING = 'However the supply is grounded: from a star point 208 V are 120 V to ground, from a corner 208 V.';
