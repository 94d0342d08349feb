import { type Check, type Measurement, runName, runPlace, TOLERANCE } from '../../checks';
import { type FigureReading, readingsOf } from '../../figures';
import type { Ductwork, Scene } from '../../scene';
import { holdReading } from '../support/holdReading';

export const check: Check = {
  id: 'fan-reaches-airflow',
  title: 'The fan reaches its airflow through the run',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: {
    kind: 'data-sheet',
    text: 'Airflow that the vent needs and the curve of its fan, on the data sheet; a fan runs only where its curve and that of the run meet.',
  },
  why: 'A run that takes more pressure than the fan has left starves the machine of its exhaust. The curve is turned to the air in the run; the maker’s own sheet governs.',
  measure: (scene) => readingsOf(scene, 'fan-airflow').flatMap((reading) => measureRun(scene, reading)),
};

function measureRun(scene: Scene, reading: FigureReading): Measurement[] {
  const run = scene.plan.runs.find(({ id }) => id === reading.subjects[0]);
  return run === undefined ? [] : [measureFan(scene, { run }, reading)];
}

function measureFan(scene: Scene, placed: Ductwork, reading: FigureReading): Measurement {
  const needed = neededAirflow(scene, placed);
  const name = runName(scene, placed);
  return holdReading(reading, {
    place: runPlace(placed),
    name: `what the fan draws through ${name}`,
    limit: needed,
    say: (value, f) =>
      value >= needed - TOLERANCE
        ? `Through ${name} the fan draws ${f.airflow(value)}; ${f.airflow(needed)} are needed.`
        : `Through ${name} the fan draws ${f.airflow(value)} of the ${f.airflow(needed)} that are needed: ${f.airflow(needed - value)} too little. Shorten the run, take bends out, widen it, or ask the maker for another fan.`,
  });
}

/** What the data sheet needs, or what the plan gives the run where that is more. */
function neededAirflow(scene: Scene, { run }: Ductwork): number {
  const vent = scene.appliances.find(({ machine }) => machine.id === run.machine)?.sheet.vent;
  return Math.max(run.duct.airflow ?? 0, vent?.kind === 'direct' ? (vent.airflow ?? 0) : 0);
}
