import { askFor, askSheet, compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { dumpStorage, dumpStorageRecord } from '../formulas/dumpStorage';
import { type CarryingPipe, carryingPipe, fullFlow, isPipe, roughnessNote } from './support/drains';

export const rule: FigureRule = {
  id: 'dump-storage',
  order: 790,
  title: 'Water that the floor sink must hold while the machine empties',
  group: 'drain',
  unit: 'm3',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** A machine that is connected directly empties into its pipe, not into a receptor. */
function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  if (!placed.sheet.connections.some(({ kind }) => kind === 'drain') || placed.machine.hookUp.waste === 'direct') return [];
  const pipe = carryingPipe(scene, placed);
  return [isPipe(pipe) ? deriveReading(scene, placed, pipe) : askFor([placed.machine.id], pipe.input, pipe.path)];
}

function deriveReading(scene: Scene, placed: PlacedMachine, { subjects, bore, slope }: CarryingPipe): FigureReading {
  if (bore.value === null) return askFor(subjects, bore.input, bore.path);
  if (slope.value === null) return askFor(subjects, slope.input, slope.path);
  const { drainFlow: dumpM3S, tank, rinseWaterL } = placed.sheet;
  if (dumpM3S === null) return askSheet(scene, placed, 'flow of the drain while the machine empties', 'drainFlow');
  const full = fullFlow(placed, bore.value, slope.value);
  if (!full.ok) return refuse(subjects, full.refusal);
  const inputs = { waterM3: tank?.volume ?? toSI(rinseWaterL, 'L'), dumpM3S, drainM3S: full.value };
  return {
    subjects,
    ...compute(dumpStorageRecord, dumpStorage, inputs),
    note: `${tank === null ? 'No tank: the water of one rack is let out at once.' : 'The whole tank is let out at once.'} ${FULL_PIPE} ${roughnessNote(placed)}`,
  };
}

const FULL_PIPE = 'The pipe below the floor sink runs full, and nothing else drains into it meanwhile.';
