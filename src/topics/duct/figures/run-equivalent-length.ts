import { askFor, compute, type FigureReading, type FigureRule } from '../../../rules';
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

type DirectVent = Extract<PlacedMachine['sheet']['vent'], { kind: 'direct' }>;

function deriveMachine(scene: Scene, { machine, sheet: { vent } }: PlacedMachine): FigureReading[] {
  if (vent.kind !== 'direct') return [];
  const runs = scene.runs.filter(({ run }) => run.machine === machine.id);
  if (runs.length > 0) return runs.map((run) => deriveRun(run, vent));
  return [askFor([machine.id], 'run of the machine', ['runs'])];
}

function deriveRun({ run, length, bends }: PlacedRun, { elbowAllowance, maxEquivalentLength }: DirectVent): FigureReading {
  const bendsDeg = bends.map(({ angleDeg }) => angleDeg);
  const answer = compute(equivalentLengthRecord, equivalentLength, {
    straightM: length / 1000,
    elbowM: elbowAllowance / 1000,
    bendsDeg,
    rule: RULE,
  });
  const share = answer.value === null ? null : Math.round((answer.value * 1e5) / maxEquivalentLength);
  return { subjects: [run.id, run.machine], ...answer, ...(share === null ? {} : { note: `${share} % of what the data sheet allows.` }) };
}
