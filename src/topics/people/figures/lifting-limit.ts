import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { liftingLimit, liftingLimitRecord } from '../formulas/liftingLimit';
import { climateNote, containerNote, LIFT_NOTE, liftsOf, OVERSHELF_NOTE, type RackLift } from './support/rackLift';

export const rule: FigureRule = {
  id: 'lifting-limit',
  order: 910,
  title: 'Weight of a rack that may be lifted to the shelf',
  group: 'people',
  unit: 'kg',
  derive: (scene) => scene.lines.flatMap((line) => liftsOf(scene, line).flatMap((lift) => deriveLift(scene, lift))),
};

/** `deck`: as it is taken up; `shelf`: as it is set down on the lowest shelf, where the body must hold it as well; `overshelf`: above the table. */
function deriveLift(scene: Scene, lift: RackLift | { reading: FigureReading }): FigureReading[] {
  if ('reading' in lift) return [lift.reading];
  return lift.ends.map(({ part, inputs }) => ({
    part,
    subjects: lift.subjects,
    ...compute(liftingLimitRecord, liftingLimit, inputs),
    note: [LIFT_NOTE, part === 'overshelf' ? OVERSHELF_NOTE : null, containerNote(scene.plan), climateNote(scene.plan)]
      .filter(isSaid)
      .join(' '),
  }));
}

const isSaid = (note: string | null): note is string => note !== null;
