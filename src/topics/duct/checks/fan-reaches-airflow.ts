import { pathOf } from '../../../plan';
import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Name,
  type NoParams,
  nameRun,
  readFigure,
  runPlace,
  TOLERANCE,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { rule as fanAirflowFigure } from '../figures/fan-airflow';

export const check: Check = {
  id: 'fan-reaches-airflow',
  order: 510,
  title: 'The fan reaches its airflow through the run',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: {
    kind: 'data-sheet',
    text: 'Airflow that the vent needs and the curve of its fan, on the data sheet; a fan runs only where its curve and that of the run meet.',
  },
  why: 'A run that takes more pressure than the fan has left starves the machine of its exhaust. The curve is turned to the air in the run; the maker’s own sheet governs. Bends of straight pieces lose more than smooth ones: while it is not known how they are made, only a fan that is too weak for smooth ones is known to be too weak.',
  measure: (scene) => readFigure(fanAirflowFigure, scene).flatMap((reading) => measureRun(scene, reading)),
};

/** Airflows in m³/s. */
export interface FanReachesAirflowMessages {
  'fan-reaches-airflow/what': { run: Name };
  'fan-reaches-airflow/reaches': { run: Name; airflow: number; needed: number };
  'fan-reaches-airflow/too-weak': { run: Name; airflow: number; needed: number };
  'fan-reaches-airflow/ask-bend-make': NoParams;
}

const say = createMessages<FanReachesAirflowMessages>();

function measureRun(scene: Scene, reading: FigureReading): Measurement[] {
  const run = scene.runs.find((placed) => placed.run.id === reading.subjects[0]);
  return run === undefined ? [] : [measureFan(scene, run, reading)];
}

function measureFan(scene: Scene, placed: PlacedRun, reading: FigureReading): Measurement {
  const needed = neededAirflow(scene, placed);
  const name = nameRun(scene, placed);
  const isOpen = reading.value !== null && reading.value >= needed - TOLERANCE && isMakeOpen(placed);
  return holdReading(
    isOpen
      ? {
          ...reading,
          value: null,
          ask: askMake(scene, placed),
        }
      : reading,
    {
      place: runPlace(placed),
      what: say('fan-reaches-airflow/what', { run: name }),
      limit: needed,
      message: (airflow) => {
        const reaches = airflow >= needed - TOLERANCE;
        return say(reaches ? 'fan-reaches-airflow/reaches' : 'fan-reaches-airflow/too-weak', { run: name, airflow, needed });
      },
    },
  );
}

/** The figure counts bends whose make is not known as smooth, which lose least; a mitred bend has but one make. */
const isMakeOpen = ({ run: { duct }, bends }: PlacedRun) => duct.bendMake === null && bends.length > 0 && duct.bendRadius !== 0;

const askMake = (scene: Scene, { run }: PlacedRun) => ({
  input: say('fan-reaches-airflow/ask-bend-make'),
  path: pathOf(scene.plan, 'runs', run.id, 'duct', 'bendMake'),
});

/** What the data sheet needs, or what the plan gives the run where that is more. */
function neededAirflow(scene: Scene, { run }: PlacedRun): number {
  const vent = scene.machines.find(({ machine }) => machine.id === run.machine)?.sheet.vent;
  return Math.max(run.duct.airflow ?? 0, vent?.kind === 'direct' ? (vent.airflow ?? 0) : 0);
}
