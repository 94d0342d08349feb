import { askDataSheet, askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { dumpStorage, dumpStorageRecord } from '../formulas/dumpStorage';
import { type CarryingPipe, carryingPipe, FLOW_INPUT, fullFlow, isPipe, roughnessNote } from './support/drains';

export const rule: FigureRule = {
  id: 'dump-storage',
  order: 790,
  title: 'Water that the floor sink must hold while the machine empties',
  group: 'drain',
  unit: 'm3',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** What was assumed. */
export interface DumpStorageMessages {
  'dump-storage/no-tank': NoParams;
  'dump-storage/whole-tank': NoParams;
  'dump-storage/full-pipe': NoParams;
}

const message = createMessages<DumpStorageMessages>();

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
  if (dumpM3S === null) return askDataSheet(scene, placed, FLOW_INPUT, 'drainFlow');
  const full = fullFlow(placed, bore.value, slope.value);
  if (!full.ok) return refuse(subjects, full.refusal);
  const inputs = { waterM3: tank?.volume ?? toSI(rinseWaterL, 'L'), dumpM3S, drainM3S: full.value };
  return {
    subjects,
    ...compute(dumpStorageRecord, dumpStorage, inputs),
    notes: [
      message(tank === null ? 'dump-storage/no-tank' : 'dump-storage/whole-tank'),
      message('dump-storage/full-pipe'),
      roughnessNote(placed),
    ],
  };
}
