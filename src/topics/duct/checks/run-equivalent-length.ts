import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Message,
  type Name,
  nameMachine,
  nameRun,
  type Refusal,
  wayPlace,
} from '../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../scene';
import { elbowCount, equivalentLength } from '../formulas/equivalentLength';

/** Of the two rules for bends that are no right angle, the one that counts more. */
const RULE = 'stricter';

export const check: Check = {
  id: 'run-equivalent-length',
  order: 230,
  title: 'The run is within its limit',
  group: 'air',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'data-sheet',
    text: 'Longest equivalent length and allowance for an elbow on the data sheet. Common practice: 50 ft, each elbow 10 ft of it.',
  },
  why: 'The machine’s own fan moves its vapour only so far. A bend counts by its angle, by the table (45° is 0.60 of an elbow) or in proportion, whichever is more; one that the fall of its duct leaves up to 3° short of an elbow counts as that elbow.',
  measure: (scene) => scene.machines.flatMap((machine) => measureMachine(scene, machine)),
};

/** Lengths in mm. */
export interface RunEquivalentLengthMessages {
  'run-equivalent-length/ask-run-of': { machine: Name };
  'run-equivalent-length/no-run': { machine: Name; most: number };
  'run-equivalent-length/ask-way': { run: Name };
  'run-equivalent-length/not-counted': { refusal: Refusal | null };
  'run-equivalent-length/holds': Counted & { most: number };
  /** `allowance`: what one elbow counts as. */
  'run-equivalent-length/over': Counted & { over: number; allowance: number };
}

/** A run as it is counted; an elbow that is half a one counts as half. */
interface Counted {
  run: Name;
  total: number;
  straight: number;
  elbows: number;
}

const say = createMessages<RunEquivalentLengthMessages>();

type DirectVent = Extract<PlacedMachine['sheet']['vent'], { kind: 'direct' }>;

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement[] {
  const { vent } = machine.sheet;
  if (vent.kind !== 'direct') return [];
  const runs = scene.runs.filter(({ run }) => run.machine === machine.machine.id);
  return runs.length === 0 ? [askRun(scene, machine, vent)] : runs.map((run) => measureRun(scene, run, vent));
}

function askRun(scene: Scene, machine: PlacedMachine, vent: DirectVent): Measurement {
  const name = nameMachine(scene, machine);
  return {
    subjects: [machine.machine.id],
    place: areaPlace(machine.footprint),
    value: null,
    limit: vent.maxEquivalentLength,
    ask: { input: say('run-equivalent-length/ask-run-of', { machine: name }), path: ['runs'] },
    message: say('run-equivalent-length/no-run', { machine: name, most: vent.maxEquivalentLength }),
  };
}

function measureRun(scene: Scene, run: PlacedRun, vent: DirectVent): Measurement {
  const bendsDeg = run.bends.map((bend) => bend.angleDeg);
  const total = equivalentLength({ straightM: run.length / 1000, elbowM: vent.elbowAllowance / 1000, bendsDeg, rule: RULE });
  const elbows = elbowCount(bendsDeg, RULE);
  const name = nameRun(scene, run);
  const common = {
    subjects: [run.run.id, run.run.machine],
    place: wayPlace(run.points, run.run.diameter),
    limit: vent.maxEquivalentLength,
  };
  if (!total.ok || !elbows.ok) {
    return {
      value: null,
      ask: { input: say('run-equivalent-length/ask-way', { run: name }), path: ['runs'] },
      message: say('run-equivalent-length/not-counted', { refusal: total.ok ? null : total.refusal }),
      ...common,
    };
  }
  const counted: Counted = { run: name, total: total.value * 1000, straight: run.length, elbows: elbows.value };
  return { value: counted.total, message: sayCounted(counted, vent), ...common };
}

function sayCounted(counted: Counted, { maxEquivalentLength, elbowAllowance }: DirectVent): Message {
  const over = counted.total - maxEquivalentLength;
  if (over <= 1e-6) return say('run-equivalent-length/holds', { ...counted, most: maxEquivalentLength });
  return say('run-equivalent-length/over', { ...counted, over, allowance: elbowAllowance });
}
