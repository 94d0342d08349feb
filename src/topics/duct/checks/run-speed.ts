import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Message,
  type Name,
  nameRun,
  narrow,
  readFigure,
  runPlace,
  TOLERANCE,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
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

/** Velocities in m/s. */
export interface RunSpeedMessages {
  'run-speed/what': { run: Name };
  'run-speed/slow': Speed;
  'run-speed/fast': Speed;
  'run-speed/usual': Speed;
}

interface Speed {
  run: Name;
  speed: number;
  least: number;
  most: number;
}

const say = createMessages<RunSpeedMessages>();

function measureRun(scene: Scene, reading: FigureReading): Measurement[] {
  const placed = scene.runs.find(({ run }) => run.id === reading.subjects[0]);
  return placed === undefined ? [] : [measureSpeed(scene, placed, reading)];
}

/** One bound at a time: the one that is broken, or the nearer one. */
function measureSpeed(scene: Scene, run: PlacedRun, reading: FigureReading): Measurement {
  const name = nameRun(scene, run);
  const speed = reading.value ?? LEAST;
  const isSlow = speed - LEAST < MOST - speed;
  return holdReading(reading, {
    place: runPlace(run),
    what: say('run-speed/what', { run: name }),
    limit: isSlow ? LEAST : MOST,
    relation: isSlow ? 'at-least' : 'at-most',
    severity: 'watch',
    message: (value) => saySpeed(name, value),
  });
}

function saySpeed(run: Name, speed: number): Message {
  const params = { run, speed, least: LEAST, most: MOST };
  if (speed < LEAST - TOLERANCE) return say('run-speed/slow', params);
  return say(speed > MOST + TOLERANCE ? 'run-speed/fast' : 'run-speed/usual', params);
}
