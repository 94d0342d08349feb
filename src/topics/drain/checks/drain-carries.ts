import {
  type Check,
  connectionPlace,
  createMessages,
  holdAgainst,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  readingsFor,
} from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';
import { rule as drainCapacityFigure } from '../figures/drain-capacity';
import { carryingPipe, FLOW_INPUT, isPipe } from '../figures/support/drains';

export const check: Check = {
  id: 'drain-carries',
  order: 560,
  title: 'The drain carries what the machine lets out',
  group: 'drain',
  unit: 'm3/s',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'National Standard Plumbing Code 2009',
    section: 'Appendix K, drains sized half full; the flow by Manning’s equation',
    confidence: 'read',
  },
  why: 'The drain opens by itself and lets the whole tank out at once. A drain that is too small sends scalding water over the floor.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of the flow and the pipe. Flows in m³/s; `half` and `full`: what it carries half full and brim full. */
export interface DrainCarriesMessages {
  'drain-carries/what': NoParams;
  'drain-carries/carries': Flow & { half: number };
  'drain-carries/half-exceeded': Flow & { half: number; full: number };
  'drain-carries/full-exceeded': Flow & { full: number };
}

interface Flow {
  machine: Name;
  flow: number;
  pipe: 'own' | 'of-floor-drain';
}

const message = createMessages<DrainCarriesMessages>();

/** More than the full pipe carries is a fault; more than half full a watch. A floor sink may hold what comes too fast. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const readings = readingsFor(drainCapacityFigure, scene, placed);
  const [half, full] = ['half-full', 'full'].map((name) => readings.find(({ part }) => part === name) ?? readings[0]);
  if (half === undefined || full === undefined) return [];
  const carrying = carryingPipe(scene, placed);
  const pipe = isPipe(carrying) && carrying.drain !== null ? 'of-floor-drain' : 'own';
  const said = { value: placed.sheet.drainFlow, input: FLOW_INPUT, path: dataSheetPath(scene, placed, 'drainFlow') };
  const measurement = holdAgainst(said, full, {
    place: connectionPlace(placed, 'drain'),
    severity: placed.machine.hookUp.waste === 'indirect' ? 'watch' : 'stop',
    ...(half.value === null ? {} : { watchLimit: half.value }),
    what: message('drain-carries/what'),
    message: (flow, most) => messageOf({ machine: nameMachine(scene, placed), flow, pipe }, half.value ?? most, most),
  });
  return [measurement];
}

function messageOf(of: Flow, half: number, full: number) {
  if (of.flow > full) return message('drain-carries/full-exceeded', { ...of, full });
  return of.flow > half ? message('drain-carries/half-exceeded', { ...of, half, full }) : message('drain-carries/carries', { ...of, half });
}
