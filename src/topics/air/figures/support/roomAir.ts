import { pathOf } from '../../../../plan';
import { askFor, type FigureReading, type Message } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { sayAirAsk } from './airAsks';
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
    if (hood.exhaust === null) return { reading: askFor([], sayAirAsk('air/ask-hood-exhaust'), pathOf(plan, 'hoods', hood.id, 'exhaust')) };
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

/** What each of them is called. */
const INPUTS: Readonly<Record<AirField, Message>> = {
  roomC: sayAirAsk('air/ask-room-temperature'),
  roomHumidity: sayAirAsk('air/ask-room-humidity'),
  makeUp: sayAirAsk('air/ask-make-up-air'),
  makeUpC: sayAirAsk('air/ask-make-up-temperature'),
  makeUpHumidity: sayAirAsk('air/ask-make-up-humidity'),
  roomExhaust: sayAirAsk('air/ask-room-exhaust'),
  outdoorC: sayAirAsk('air/ask-outdoor-temperature'),
  ductAirC: sayAirAsk('air/ask-duct-air-temperature'),
  wallConductance: sayAirAsk('air/ask-wall-conductance'),
  ceilingConductance: sayAirAsk('air/ask-ceiling-conductance'),
  elevation: sayAirAsk('air/ask-elevation'),
};

/** One thing known of the air, or the reading that asks for it. */
export function needAir({ plan }: Scene, field: AirField, subjects: string[] = []): Known<number> {
  const value = plan.air[field];
  return value === null ? { reading: askFor(subjects, INPUTS[field], ['air', field]) } : { known: value };
}
