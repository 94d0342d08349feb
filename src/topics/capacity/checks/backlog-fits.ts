import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  isOver,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  readFigure,
  severalPlaces,
  tablePlace,
} from '../../../rules';
import type { Scene } from '../../../scene';
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

/** What is said of the racks that wait at the end of the peak, and of the places for them before the machine. */
export interface BacklogFitsMessages {
  'backlog-fits/what': NoParams;
  'backlog-fits/none-waits': NoParams;
  'backlog-fits/room': Waiting;
  'backlog-fits/too-little-room': Waiting;
  /** They find room at the rate of the machines, but not at what practice keeps of it. */
  'backlog-fits/too-little-room-in-practice': Waiting;
}

interface Waiting {
  waiting: number;
  places: number;
}

const say = createMessages<BacklogFitsMessages>();

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
    what: say('backlog-fits/what'),
    limit: places,
    severity: 'watch',
    message: (waiting) => sayBacklog({ waiting, places }, isRated),
  });
}

function sayBacklog(racks: Waiting, isRated: boolean): Message {
  if (isOver(racks.waiting, racks.places)) return say(`backlog-fits/too-little-room${isRated ? '' : '-in-practice'}`, racks);
  return isOver(racks.waiting, 0) ? say('backlog-fits/room', racks) : say('backlog-fits/none-waits');
}
