import { type Ask, askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { PlacedThing, Scene } from '../../../scene';
import { WORKING_CONDITIONS, type WorkingCondition, workingDepth, workingDepthRecord } from '../formulas/workingSpace';
import { POWER_CAUTION, supplyAsk } from './support/power';
import { depthsNeeded, TO_GROUND, type ToGround, toGroundOf } from './support/toGround';

export const rule: FigureRule = {
  id: 'working-depth',
  order: 720,
  title: 'Free depth before the panel board',
  group: 'power',
  unit: 'm',
  derive: (scene) => scene.things.filter(({ thing }) => thing.kind === 'panel-board').flatMap((panel) => deriveReadings(scene, panel)),
};

/** What is said of a depth. */
export interface WorkingDepthMessages {
  'working-depth/opposite': { condition: WorkingCondition };
  'working-depth/as-stated': NoParams;
  'working-depth/any-earthing': NoParams;
}

const say = createMessages<WorkingDepthMessages>();

/** One for each of what may stand opposite: `A` nothing live or earthed, `B` something earthed, `C` live parts. */
function deriveReadings({ plan }: Scene, { thing }: PlacedThing): FigureReading[] {
  const subjects = [thing.id];
  const { voltage } = plan.supply;
  if (voltage === null) return [waitFor(subjects, supplyAsk('voltage'))];
  const volts = toGroundOf(plan, voltage);
  if (!volts.ok) return [refuse(subjects, volts.refusal)];
  const earthing = plan.supply.toGroundV === null ? say('working-depth/any-earthing') : say('working-depth/as-stated');
  return WORKING_CONDITIONS.map((condition) => ({
    part: condition,
    ...depthAt(subjects, volts.value, condition),
    notes: [say('working-depth/opposite', { condition }), earthing, POWER_CAUTION],
  }));
}

/** Where the voltage to ground decides, and is not known, it is asked for. */
function depthAt(subjects: string[], volts: ToGround, condition: WorkingCondition): FigureReading {
  const depths = depthsNeeded(volts, condition);
  if (!depths.ok) return refuse(subjects, depths.refusal);
  if (depths.value.least !== depths.value.most) return waitFor(subjects, TO_GROUND);
  return { subjects, ...compute(workingDepthRecord, workingDepth, { voltsToGround: volts.mostV, condition }) };
}

const waitFor = (subjects: string[], { input, path }: Ask) => askFor(subjects, input, path);
