import {
  areaPlace,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Message,
  type NoParams,
  readFigure,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as roomAirflowNeededFigure } from '../figures/room-airflow-needed';
import { rule as roomHumiditySteadyFigure } from '../figures/room-humidity-steady';
import { isHeatSure } from '../figures/support/machineHeats';
import { ROOM_HUMIDITY } from '../formulas/airLimits';

export const check: Check = {
  id: 'room-humidity',
  order: 480,
  title: 'The room does not grow too humid',
  group: 'air',
  unit: 'share',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Minnesota Rules 1346.0507 subp. 1 (2015)',
    section: 'at most 65 % where a machine wins back its own heat and vapour, its whole heat counted',
    confidence: 'read',
  },
  why: 'A machine without a hood gives its vapour to the room. The law binds where the machine wins back its own heat and vapour; for any other it is a good measure, and only a watch. So it is while its data sheet does not state what heat it still gives: then the most that it can be is counted.',
  measure: (scene) => readFigure(roomHumiditySteadyFigure, scene).map((reading) => measureRoom(scene, reading)),
};

/** Humidities as shares of 1, airflow in m³/s. */
export interface RoomHumidityMessages {
  'room-humidity/what': NoParams;
  'room-humidity/holds': { humidity: number; most: number };
  /** `needed`: airflow that would keep the room drier; null where no such air can. */
  'room-humidity/too-humid': { humidity: number; most: number; needed: number | null };
}

const say = createMessages<RoomHumidityMessages>();

function measureRoom(scene: Scene, reading: FigureReading): Measurement {
  const most = ROOM_HUMIDITY.max ?? 0;
  const binds = scene.machines.some(({ sheet }) => sheet.vent.kind === 'recovery') && isHeatSure(scene);
  return holdReading(reading, {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: areaPlace(scene.room.outline),
    what: say('room-humidity/what'),
    limit: most,
    severity: binds ? 'stop' : 'watch',
    message: (value) => sayHumidity(scene, value, most),
  });
}

function sayHumidity(scene: Scene, humidity: number, most: number): Message {
  if (humidity <= most + TOLERANCE) return say('room-humidity/holds', { humidity, most });
  return say('room-humidity/too-humid', { humidity, most, needed: readFigure(roomAirflowNeededFigure, scene)[0]?.value ?? null });
}
