import { type FigureReading, refuse } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { atmosphericPressure } from '../../formulas/atmosphere';
import { needAir } from './roomAir';

type Known<T> = { known: T } | { reading: FigureReading };

/** The pressure of the atmosphere where the building stands. */
export function needPressure(scene: Scene, subjects: string[]): Known<number> {
  const elevation = needAir(scene, 'elevation', subjects);
  if ('reading' in elevation) return elevation;
  const pressure = atmosphericPressure({ altitudeM: elevation.known / 1000 });
  return pressure.ok ? { known: pressure.value } : { reading: refuse(subjects, pressure.refusal) };
}
