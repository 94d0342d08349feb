import { pathOf } from '../../../../plan';
import { askFor, type FigureReading } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { needAirflow } from './runAirflow';

/** What is drawn out of the room: at its machines, by hood or run, and at the ceiling. m³/s. */
export interface RoomExhaust {
  hoods: number[];
  runs: number[];
  room: number;
}

type Known<T> = { known: T } | { reading: FigureReading };

/** All that draws air, or the reading that asks for the first that is not known. */
export function needRoomExhaust(scene: Scene): Known<RoomExhaust> {
  const { plan } = scene;
  const hoods: number[] = [];
  for (const hood of plan.hoods) {
    if (hood.exhaust === null) return { reading: askFor([], 'exhaust of the hood', pathOf(plan, 'hoods', hood.id, 'exhaust')) };
    hoods.push(hood.exhaust);
  }
  const runs: number[] = [];
  for (const run of scene.runs) {
    const airflow = needAirflow(scene, run);
    if ('reading' in airflow) return airflow;
    runs.push(airflow.known);
  }
  const room = needAir(scene, 'roomExhaust');
  return 'reading' in room ? room : { known: { hoods, runs, room: room.known } };
}

/** All that is drawn out of the room and all that is blown in, m³/s, or the reading that asks for the first that is not known. */
export function needRoomFlows(scene: Scene): Known<{ exhaustM3s: number; makeUpM3s: number }> {
  const exhaust = needRoomExhaust(scene);
  if ('reading' in exhaust)
    return {
      reading: {
        ...exhaust.reading,
        subjects: [],
      },
    };
  const makeUp = needAir(scene, 'makeUp');
  return 'reading' in makeUp ? makeUp : { known: { exhaustM3s: sumOf(exhaust.known), makeUpM3s: makeUp.known } };
}

export const sumOf = ({ hoods, runs, room }: RoomExhaust): number => atMachines({ hoods, runs }) + room;

export const atMachines = ({ hoods, runs }: Pick<RoomExhaust, 'hoods' | 'runs'>): number =>
  [...hoods, ...runs].reduce((sum, one) => sum + one, 0);

/** All but what is answered by yes or no. */
type AirField = Exclude<keyof Scene['plan']['air'], 'interlocked' | 'hoodWaived'>;

/** What people call each of them. */
const WORDS: Readonly<Record<AirField, string>> = {
  roomC: 'temperature of the room',
  roomHumidity: 'humidity of the room',
  makeUp: 'make-up air',
  makeUpC: 'temperature of the make-up air',
  makeUpHumidity: 'humidity of the make-up air',
  roomExhaust: 'general exhaust of the room',
  outdoorC: 'coldest air outside',
  ductAirC: 'temperature of the air around the run outside of the room',
  wallConductance: 'heat through the outer wall',
  ceilingConductance: 'heat through the ceiling',
  elevation: 'height above the sea',
};

/** One thing known of the air, or the reading that asks for it. */
export function needAir({ plan }: Scene, field: AirField, subjects: string[] = []): Known<number> {
  const value = plan.air[field];
  return value === null ? { reading: askFor(subjects, WORDS[field], ['air', field]) } : { known: value };
}
