import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf } from '../../../rules';
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

/** What is said of the pipe. */
export interface DrainCapacityMessages {
  'drain-capacity/of-floor-drain': NoParams;
  'drain-capacity/half-full': NoParams;
  'drain-capacity/full': NoParams;
}

const message = createMessages<DrainCapacityMessages>();

/** `half-full`, as sanitary drains are sized, and `full`, the most that runs off without pressure. */
function deriveReadings(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const pipe = carryingPipe(scene, placed);
  if (!isPipe(pipe)) return [askFor([placed.machine.id], pipe.input, pipe.path)];
  const { subjects, bore, slope, drain } = pipe;
  if (bore.value === null) return [askFor(subjects, bore.input, bore.path)];
  if (slope.value === null) return [askFor(subjects, slope.input, slope.path)];
  const laid = { bore: bore.value, slope: slope.value };
  return PARTS.map(({ part, depth }) => ({
    part,
    subjects,
    ...compute(drainFlowRecord, drainFlow, capacityInputs(placed, laid.bore, laid.slope, depth)),
    ...notesOf(drain === null ? null : message('drain-capacity/of-floor-drain'), message(`drain-capacity/${part}`), roughnessNote(placed)),
  }));
}

const PARTS = [
  { part: 'half-full', depth: 0.5 },
  { part: 'full', depth: 1 },
] as const;
