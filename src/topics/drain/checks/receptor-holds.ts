import {
  type Check,
  connectionPlace,
  createMessages,
  type FigureReading,
  holdAgainst,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as dumpStorageFigure } from '../figures/dump-storage';

export const check: Check = {
  id: 'receptor-holds',
  order: 640,
  title: 'The floor sink holds what its pipe does not carry',
  group: 'drain',
  unit: 'm3',
  relation: 'at-least',
  source: { kind: 'geometry', text: 'Balance of volume: what the machine lets out less what the full pipe carries meanwhile.' },
  why: 'A machine that empties faster than the pipe below the floor sink fills the sink; what it can’t hold runs over the floor, hot and slippery.',
  measure: (scene) =>
    scene.machines.flatMap((placed) =>
      readingsFor(dumpStorageFigure, scene, placed).map((reading) => measureReceptor(scene, placed, reading)),
    ),
};

/** What is said of the floor sink; volumes in m³. */
export interface ReceptorHoldsMessages {
  'receptor-holds/ask-volume': NoParams;
  'receptor-holds/what': NoParams;
  'receptor-holds/keeps-up': { machine: Name };
  'receptor-holds/holds': Volumes;
  'receptor-holds/runs-over': Volumes;
}

interface Volumes {
  machine: Name;
  gathers: number;
  holds: number;
}

const message = createMessages<ReceptorHoldsMessages>();

/** Where the pipe keeps up nothing is to be held, and what the sink holds need not be known. */
function measureReceptor(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement {
  const index = scene.room.floorDrains.findIndex(({ drain }) => drain.id === reading.subjects[1]);
  const volume = scene.room.floorDrains[index]?.drain.waste.volume ?? null;
  const said = {
    value: volume === null && reading.value === 0 ? 0 : volume,
    input: message('receptor-holds/ask-volume'),
    path: ['room', 'floorDrains', index, 'waste', 'volume'],
  };
  return holdAgainst(said, reading, {
    place: connectionPlace(placed, 'drain'),
    what: message('receptor-holds/what'),
    message: (holds, must) => {
      const machine = nameMachine(scene, placed);
      if (must === 0) return message('receptor-holds/keeps-up', { machine });
      return message(holds < must ? 'receptor-holds/runs-over' : 'receptor-holds/holds', { machine, gathers: must, holds });
    },
  });
}
