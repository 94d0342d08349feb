import { dumpStorage, dumpStorageRecord } from '../../engineering';
import type { PlacedMachine, Scene } from '../../scene';
import { toSI } from '../../units';
import { compute } from '../compute';
import { askSheet } from '../support/askSheet';
import { fullFlow, nearestDrain, outletOf, ROUGHNESS_NOTE } from '../support/drains';
import { askFor, refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'dump-storage',
  title: 'Water that the floor sink must hold while the machine empties',
  group: 'drain',
  unit: 'm3',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** A machine that is connected directly empties into its pipe, not into a receptor. */
function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const outlet = outletOf(placed);
  if (outlet === undefined || placed.machine.hookUp.waste === 'direct') return [];
  const nearest = nearestDrain(scene.room, outlet);
  if (nearest === null) return [askFor([placed.machine.id], 'floor drain or floor sink', ['room', 'floorDrains'])];
  return [deriveReading(scene, placed, nearest)];
}

function deriveReading(
  scene: Scene,
  placed: PlacedMachine,
  { placed: { drain }, index }: NonNullable<ReturnType<typeof nearestDrain>>,
): FigureReading {
  const subjects = [placed.machine.id, drain.id];
  const { bore, slope } = drain.waste;
  const pathTo = (field: 'bore' | 'slope') => ['room', 'floorDrains', index, 'waste', field];
  if (bore === null) return askFor(subjects, 'inside diameter of the floor drain’s pipe', pathTo('bore'));
  if (slope === null) return askFor(subjects, 'fall of the floor drain’s pipe', pathTo('slope'));
  const { drainFlow: dumpM3S, tank, rinseWaterL } = placed.sheet;
  if (dumpM3S === null) return askSheet(scene, placed, 'flow of the drain while the machine empties', 'drainFlow');
  const pipe = fullFlow(bore, slope);
  if (!pipe.ok) return refuse(subjects, pipe.reason);
  const inputs = { waterM3: tank?.volume ?? toSI(rinseWaterL, 'L'), dumpM3S, drainM3S: pipe.value };
  return {
    subjects,
    ...compute(dumpStorageRecord, dumpStorage, inputs),
    note: `${tank === null ? 'No tank: the water of one rack is let out at once.' : 'The whole tank is let out at once.'} ${FULL_PIPE} ${ROUGHNESS_NOTE}`,
  };
}

const FULL_PIPE = 'The pipe below the floor sink runs full, and nothing else drains into it meanwhile.';
