import {
  type Check,
  connectionPlace,
  type FigureReading,
  holdAgainst,
  type Measurement,
  machineName,
  readingsFor,
  sentence,
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

/** Where the pipe keeps up nothing is to be held, and what the sink holds need not be known. */
function measureReceptor(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement {
  const index = scene.room.floorDrains.findIndex(({ drain }) => drain.id === reading.subjects[1]);
  const volume = scene.room.floorDrains[index]?.drain.waste.volume ?? null;
  const said = {
    value: volume === null && reading.value === 0 ? 0 : volume,
    input: 'volume that the floor sink holds',
    path: ['room', 'floorDrains', index, 'waste', 'volume'],
  };
  return holdAgainst(said, reading, {
    place: connectionPlace(placed, 'drain'),
    name: 'what the floor sink must hold',
    say: (holds, must, f) => {
      if (must === 0) return `The pipe below the floor sink keeps up with ${machineName(scene, placed)} as it empties.`;
      const fills = `While ${machineName(scene, placed)} empties, ${f.volume(must)} gather in the floor sink, which holds ${f.volume(holds)}`;
      return sentence(holds < must ? `${fills}. Take a larger floor sink or a larger pipe below it.` : `${fills}.`);
    },
  });
}
