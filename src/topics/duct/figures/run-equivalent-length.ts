import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf } from '../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../scene';
import { equivalentLength, equivalentLengthRecord } from '../formulas/equivalentLength';

/** Of the two rules for bends that are no right angle, the one that counts more. */
const RULE = 'stricter';

export const rule: FigureRule = {
  id: 'run-equivalent-length',
  order: 520,
  title: 'Equivalent length of the run',
  group: 'air',
  unit: 'm',
  derive: (scene) => scene.machines.flatMap((machine) => deriveMachine(scene, machine)),
};

/** Lengths in mm. */
export interface RunEquivalentLengthFigureMessages {
  'run-equivalent-length/share': { length: number; most: number };
  'run-equivalent-length/ask-run': NoParams;
}

const say = createMessages<RunEquivalentLengthFigureMessages>();

type DirectVent = Extract<PlacedMachine['sheet']['vent'], { kind: 'direct' }>;

function deriveMachine(scene: Scene, { machine, sheet: { vent } }: PlacedMachine): FigureReading[] {
  if (vent.kind !== 'direct') return [];
  const runs = scene.runs.filter(({ run }) => run.machine === machine.id);
  if (runs.length > 0) return runs.map((run) => deriveRun(run, vent));
  return [askFor([machine.id], say('run-equivalent-length/ask-run'), ['runs'])];
}

function deriveRun({ run, length, bends }: PlacedRun, { elbowAllowance, maxEquivalentLength }: DirectVent): FigureReading {
  const bendsDeg = bends.map(({ angleDeg }) => angleDeg);
  const answer = compute(equivalentLengthRecord, equivalentLength, {
    straightM: length / 1000,
    elbowM: elbowAllowance / 1000,
    bendsDeg,
    rule: RULE,
  });
  const lengths = answer.value === null ? null : { length: answer.value * 1000, most: maxEquivalentLength };
  return { subjects: [run.id, run.machine], ...answer, ...notesOf(lengths === null ? null : say('run-equivalent-length/share', lengths)) };
}
