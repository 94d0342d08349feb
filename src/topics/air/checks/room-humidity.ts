import { areaPlace, type Check, type FigureReading, holdReading, type Measurement, readFigure, TOLERANCE } from '../../../rules';
import type { Scene } from '../../../scene';
import { formatNumber } from '../../../units';
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

function measureRoom(scene: Scene, reading: FigureReading): Measurement {
  const most = ROOM_HUMIDITY.max ?? 0;
  const binds = scene.machines.some(({ sheet }) => sheet.vent.kind === 'recovery') && isHeatSure(scene);
  return holdReading(reading, {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: areaPlace(scene.room.outline),
    name: 'how humid the room grows',
    limit: most,
    severity: binds ? 'stop' : 'watch',
    say: (value, f) => {
      const grows = `While the machine washes rack after rack the room grows to ${formatNumber(100 * value)} %`;
      if (value <= most + TOLERANCE) return `${grows}; ${formatNumber(100 * most)} % is the most.`;
      const needed = readFigure(roomAirflowNeededFigure, scene)[0]?.value ?? null;
      const draw = needed === null ? 'Bring in drier air' : `Draw ${f.airflow(needed)} of such air through the room, or drier air`;
      return `${grows}, more than ${formatNumber(100 * most)} %. ${draw}.`;
    },
  });
}
