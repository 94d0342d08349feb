import { askFor, compute, type FigureReading, type FigureRule, noteOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { drainFlow, drainFlowRecord } from '../formulas/drainFlow';
import { capacityInputs, carryingPipe, isPipe, roughnessNote } from './support/drains';

export const rule: FigureRule = {
  id: 'drain-capacity',
  order: 750,
  title: 'What the drain of the machine carries',
  group: 'drain',
  unit: 'm3/s',
  derive: (scene) => scene.machines.flatMap((placed) => deriveReadings(scene, placed)),
};

/** `half-full`, as sanitary drains are sized, and `full`, the most that runs off without pressure. */
function deriveReadings(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const pipe = carryingPipe(scene, placed);
  if (!isPipe(pipe)) return [askFor([placed.machine.id], pipe.input, pipe.path)];
  const { subjects, bore, slope, drain } = pipe;
  if (bore.value === null) return [askFor(subjects, bore.input, bore.path)];
  if (slope.value === null) return [askFor(subjects, slope.input, slope.path)];
  const laid = { bore: bore.value, slope: slope.value };
  return PARTS.map(({ part, depth, note }) => ({
    part,
    subjects,
    ...compute(drainFlowRecord, drainFlow, capacityInputs(placed, laid.bore, laid.slope, depth)),
    ...noteOf(drain === null ? null : OF_DRAIN, note, roughnessNote(placed)),
  }));
}

const OF_DRAIN = 'Over an air gap the pipe of the nearest floor drain carries the waste on.';

const PARTS = [
  { part: 'half-full', depth: 0.5, note: 'Sanitary drains are sized half full.' },
  { part: 'full', depth: 1, note: 'Twice as much, and no air left in the pipe.' },
] as const;
