import {
  areaPlace,
  type Check,
  decimal,
  type Measurement,
  machineName,
  numberWord,
  refusalSentence,
  runName,
  sentence,
  wayPlace,
} from '../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
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

type DirectVent = Extract<PlacedMachine['sheet']['vent'], { kind: 'direct' }>;

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement[] {
  const { vent } = machine.sheet;
  if (vent.kind !== 'direct') return [];
  const runs = scene.runs.filter(({ run }) => run.machine === machine.machine.id);
  return runs.length === 0 ? [askRun(scene, machine, vent)] : runs.map((run) => measureRun(scene, run, vent));
}

function askRun(scene: Scene, machine: PlacedMachine, vent: DirectVent): Measurement {
  const name = machineName(scene, machine);
  return {
    subjects: [machine.machine.id],
    place: areaPlace(machine.footprint),
    value: null,
    limit: vent.maxEquivalentLength,
    ask: { input: `run of ${name}`, path: ['runs'] },
    say: (f) =>
      sentence(
        `${name} vents through a run of its own, and none is drawn. Draw it; it may count as ${f.length(vent.maxEquivalentLength)}.`,
      ),
  };
}

function measureRun(scene: Scene, run: PlacedRun, vent: DirectVent): Measurement {
  const bendsDeg = run.bends.map((bend) => bend.angleDeg);
  const total = equivalentLength({ straightM: run.length / 1000, elbowM: vent.elbowAllowance / 1000, bendsDeg, rule: RULE });
  const elbows = elbowCount(bendsDeg, RULE);
  const common = {
    subjects: [run.run.id, run.run.machine],
    place: wayPlace(run.points, run.run.diameter),
    limit: vent.maxEquivalentLength,
  };
  if (!total.ok || !elbows.ok) {
    const reason = total.ok ? '' : refusalSentence(total.refusal);
    return {
      value: null,
      ask: { input: `way of ${runName(scene, run)}`, path: ['runs'] },
      say: () => `The run cannot be counted: ${reason}.`,
      ...common,
    };
  }
  const counted: Counted = { name: runName(scene, run), total: total.value * 1000, straight: run.length, elbows: elbows.value, vent };
  return { value: counted.total, say: (f) => sentence(describe(counted, f)), ...common };
}

interface Counted {
  name: string;
  total: number;
  straight: number;
  elbows: number;
  vent: DirectVent;
}

function describe({ name, total, straight, elbows, vent }: Counted, f: Formatter): string {
  const sum = `${name} counts as ${f.length(total)}: ${f.length(straight)} and ${decimal(elbows)} ${elbows === 1 ? 'elbow' : 'elbows'}`;
  const over = total - vent.maxEquivalentLength;
  if (over <= 1e-6) return `${sum}. ${f.length(vent.maxEquivalentLength)} is the limit, ${f.length(-over)} is left.`;
  return `${sum}. That is ${f.length(over)} over${inElbows(over, vent.elbowAllowance)}. Shorten it or take bends out.`;
}

/** `: two elbows` where it comes out even, `: more than two elbows` or nothing where it does not. */
function inElbows(over: number, allowance: number): string {
  if (allowance <= 0 || over < allowance * 0.95) return '';
  const elbows = over / allowance;
  const whole = Math.round(elbows);
  const words = (n: number) => `${numberWord(n)} ${n === 1 ? 'elbow' : 'elbows'}`;
  return Math.abs(elbows - whole) <= 0.05 ? `, which is ${words(whole)}` : `, more than ${words(Math.floor(elbows))}`;
}
