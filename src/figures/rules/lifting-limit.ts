import { liftingLimit, liftingLimitRecord } from '../../engineering';
import type { Layout, Scene } from '../../scene';
import { compute } from '../compute';
import { climateNote, containerNote, LIFT_NOTE, OVERSHELF_NOTE, overshelfLifts, type RackLift, rackLift } from '../support/rackLift';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'lifting-limit',
  title: 'Weight of a rack that may be lifted to the shelf',
  group: 'people',
  unit: 'kg',
  derive: (scene) => scene.layouts.flatMap((line) => deriveLine(scene, line)),
};

/** `deck`: as it is taken up; `shelf`: as it is set down on the lowest shelf, where the body must hold it as well; `overshelf`: above the table. */
function deriveLine(scene: Scene, line: Layout): FigureReading[] {
  const lift = rackLift(scene, line);
  return [...(lift === null ? [] : [lift]), ...overshelfLifts(scene, line)].flatMap((one) => deriveLift(scene, one));
}

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
