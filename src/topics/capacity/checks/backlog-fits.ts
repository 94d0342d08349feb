import {
  type Check,
  type FigureReading,
  holdReading,
  isOver,
  type Measurement,
  machinesPlace,
  readFigure,
  severalPlaces,
  tablePlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { formatNumber } from '../../../units';
import { rule as peakBacklogFigure } from '../figures/peak-backlog';
import { rule as racksThatCanWaitFigure } from '../figures/racks-that-can-wait';

export const check: Check = {
  id: 'backlog-fits',
  order: 270,
  title: 'Racks that wait find room',
  group: 'capacity',
  unit: 'count',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-301.13, room for all soiled ware that gathers; that 0.70 of the rate is kept in practice is from memory',
    confidence: 'read',
  },
  why: 'What comes back faster than it is washed waits on the landing, at the drop-off and on carts. What finds no room there stands on the floor, or on the clean side. Where the machines are slower than the peak and too little room is the consequence, the stop stands at the peak.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measureBacklog(scene)]),
};

/**
 * At the rate of the machines; where that fits, at what practice keeps of it. Never more than a watch: racks that find no room at the
 * rate itself come back faster than they are washed, and `peak-kept` stops at that.
 */
function measureBacklog(scene: Scene): Measurement {
  const [rated, practice = rated] = readFigure(peakBacklogFigure, scene);
  const places = readFigure(racksThatCanWaitFigure, scene)[0]?.value ?? 0;
  const isRated = rated?.value == null || isOver(rated.value, places) || !isOver(practice?.value ?? 0, places);
  const { part: _part, ...reading }: FigureReading = (isRated ? rated : practice) ?? { subjects: [], value: null, how: null };
  const tables = scene.lines.flatMap(({ soiled }) => (soiled === null ? [] : [tablePlace(soiled)]));
  return holdReading(reading, {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: tables.length === 0 ? machinesPlace(scene) : severalPlaces(...tables),
    name: 'how many racks wait at the end of the peak',
    limit: places,
    severity: 'watch',
    say: (value) => sayBacklog(value, places, isRated),
  });
}

function sayBacklog(waiting: number, places: number, isRated: boolean): string {
  const found = places === 0 ? 'there is no room for any' : `there is room for ${places}`;
  const wait = `At the end of the peak ${formatNumber(waiting, 1)} racks wait`;
  if (isOver(waiting, places))
    return isRated
      ? `${wait}, for they come back faster than the machine washes, and ${found} before it: with a faster machine none would wait; a longer soiled landing or a cart would hold them until they are washed.`
      : `${wait}, when the machine does 0.70 of its rate, and ${found} before the machine: lengthen the soiled landing, add a cart, or take a faster machine.`;
  if (isOver(waiting, 0)) return `${wait}, and ${found} before the machine.`;
  return 'No rack waits at the end of the peak.';
}
