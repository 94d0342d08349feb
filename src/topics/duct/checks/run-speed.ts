import {
  type Check,
  type FigureReading,
  holdReading,
  type Measurement,
  narrow,
  readFigure,
  runName,
  runPlace,
  sentence,
  TOLERANCE,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { rule as runSpeedFigure } from '../figures/run-speed';
import { DUCT_VELOCITY, VAPOUR_VELOCITY } from '../formulas/ductLimits';

/** Two rows differ; both hold within this. */
const RANGE = narrow(DUCT_VELOCITY, VAPOUR_VELOCITY);
const [LEAST, MOST] = [RANGE.min ?? 0, RANGE.max ?? 0];

export const check: Check = {
  id: 'run-speed',
  order: 500,
  title: 'The air in the run is neither slow nor fast',
  group: 'air',
  unit: 'm/s',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Air Conditioning and Mechanical Ventilation System, vol. 1',
    section: 'p. 5-34, dishwasher exhaust: 1,500 to 2,200 fpm (that they are least and most is inferred); for vapours 1,000 to 2,000 fpm',
    confidence: 'secondary',
  },
  why: 'Slow air lets its vapour settle in the duct; fast air is loud and costs pressure. The range is that of a handbook, so outside of it is only a watch.',
  measure: (scene) => readFigure(runSpeedFigure, scene).flatMap((reading) => measureRun(scene, reading)),
};

function measureRun(scene: Scene, reading: FigureReading): Measurement[] {
  const placed = scene.runs.find(({ run }) => run.id === reading.subjects[0]);
  return placed === undefined ? [] : [measureSpeed(scene, placed, reading)];
}

/** One bound at a time: the one that is broken, or the nearer one. */
function measureSpeed(scene: Scene, run: PlacedRun, reading: FigureReading): Measurement {
  const speed = reading.value ?? LEAST;
  const isSlow = speed - LEAST < MOST - speed;
  return holdReading(reading, {
    place: runPlace(run),
    name: `the velocity in ${runName(scene, run)}`,
    limit: isSlow ? LEAST : MOST,
    relation: isSlow ? 'at-least' : 'at-most',
    severity: 'watch',
    say: (value, f) => sentence(saySpeed(runName(scene, run), value, f)),
  });
}

function saySpeed(name: string, speed: number, f: Formatter): string {
  const range = `${f.speed(LEAST)} to ${f.speed(MOST)}`;
  if (speed < LEAST - TOLERANCE)
    return `in ${name} the air goes ${f.speed(speed)}, slower than the ${range} that carry vapour. Take a narrower duct, or more air.`;
  if (speed > MOST + TOLERANCE)
    return `in ${name} the air goes ${f.speed(speed)}, faster than the ${range} that are usual. Take a wider duct.`;
  return `in ${name} the air goes ${f.speed(speed)}; ${range} are usual.`;
}
