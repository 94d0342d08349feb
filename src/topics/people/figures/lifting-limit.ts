import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf } from '../../../rules';
import type { Scene } from '../../../scene';
import { liftingLimit, liftingLimitRecord } from '../formulas/liftingLimit';
import { isLongToHold, isOutsideClimate, liftsOf, type RackLift } from './support/rackLift';

export const rule: FigureRule = {
  id: 'lifting-limit',
  order: 910,
  title: 'Weight of a rack that may be lifted to the shelf',
  group: 'people',
  unit: 'kg',
  derive: (scene) => scene.lines.flatMap((line) => liftsOf(scene, line).flatMap((lift) => deriveLift(scene, lift))),
};

/** What is to be known beside the limit: what was taken, and for which rooms and racks it holds. */
export interface LiftingLimitMessages {
  'lifting-limit/taken': NoParams;
  'lifting-limit/overshelf': NoParams;
  'lifting-limit/container': NoParams;
  'lifting-limit/climate': NoParams;
  'lifting-limit/climate-outside': NoParams;
}

const say = createMessages<LiftingLimitMessages>();

/** `deck`: as it is taken up; `shelf`: as it is set down on the lowest shelf, where the body must hold it as well; `overshelf`: above the table. */
function deriveLift(scene: Scene, lift: RackLift | { reading: FigureReading }): FigureReading[] {
  if ('reading' in lift) return [lift.reading];
  return lift.ends.map(({ part, inputs }) => ({
    part,
    subjects: lift.subjects,
    ...compute(liftingLimitRecord, liftingLimit, inputs),
    ...notesOf(
      say('lifting-limit/taken'),
      part === 'overshelf' ? say('lifting-limit/overshelf') : null,
      isLongToHold(scene.plan) ? say('lifting-limit/container') : null,
      say(isOutsideClimate(scene.plan) ? 'lifting-limit/climate-outside' : 'lifting-limit/climate'),
    ),
  }));
}
