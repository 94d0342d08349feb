import { askFor, type FigureReading, refuse } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { atmosphericPressure } from '../../formulas/atmosphere';

type Known<T> = { known: T } | { reading: FigureReading };

/** The pressure of the atmosphere where the building stands. */
export function needPressure({ plan }: Scene, subjects: string[]): Known<number> {
  if (plan.air.elevation === null) return { reading: askFor(subjects, 'height above the sea', ['air', 'elevation']) };
  const pressure = atmosphericPressure({ altitudeM: plan.air.elevation / 1000 });
  return pressure.ok ? { known: pressure.value } : { reading: refuse(subjects, pressure.refusal) };
}
