import { askFor, compute, createMessages, type FigureReading, type FigureRule, type Message, type NoParams, notesOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { drainSpeed, drainSpeedRecord, SCOURING_SPEED } from '../formulas/drainFlow';
import { capacityInputs, carryingPipe, isPipe, roughnessNote } from './support/drains';

export const rule: FigureRule = {
  id: 'drain-speed',
  order: 760,
  title: 'Speed in the drain of the machine, half full',
  group: 'drain',
  unit: 'm/s',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** Whether it scours itself clean. */
export interface DrainSpeedMessages {
  'drain-speed/slow': NoParams;
  'drain-speed/scours': NoParams;
}

const message = createMessages<DrainSpeedMessages>();

/** Half full, as sanitary drains are sized; brim full it is the same. Beside it the speed at which a drain keeps itself clean. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const pipe = carryingPipe(scene, placed);
  if (!isPipe(pipe)) return askFor([placed.machine.id], pipe.input, pipe.path);
  const { subjects, bore, slope } = pipe;
  if (bore.value === null) return askFor(subjects, bore.input, bore.path);
  if (slope.value === null) return askFor(subjects, slope.input, slope.path);
  const answer = compute(drainSpeedRecord, drainSpeed, capacityInputs(placed, bore.value, slope.value, 0.5));
  return { subjects, ...answer, ...notesOf(noteFor(answer.value), roughnessNote(placed)) };
}

/** Only as a note: no code at hand makes the scouring speed a rule beside the least fall. */
function noteFor(speed: number | null): Message | null {
  if (speed === null) return null;
  return message(speed < SCOURING_SPEED * (1 - 1e-9) ? 'drain-speed/slow' : 'drain-speed/scours');
}
