import { distance3 } from '../../../geometry';
import { pathOf } from '../../../plan';
import { type Check, editRun, type Measurement, pointPlace, runName, sentence, wayPlace } from '../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../scene';
import { cordReserve } from '../formulas/cordReserve';

const WIRING = 'Field wiring belongs to a licensed electrician.';

export const check: Check = {
  id: 'fan-on-run',
  order: 250,
  title: 'The fan sits in the run and within its cord',
  group: 'air',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'common-practice',
    text: 'The fan sits on the machine or above the ceiling; on its side it has a drain hole at its bottom; about 10 ft of cord come with it, longer is field wiring.',
  },
  why: 'Water gathers in a fan that lies on its side and has no hole, and a cord that does not reach is found when the ceiling is closed.',
  measure: (scene) => scene.runs.flatMap((run) => measureRun(scene, run)),
};

/** A fan with its run and machine. */
interface Fitted {
  scene: Scene;
  run: PlacedRun;
  fan: NonNullable<PlacedRun['fan']>;
  drawn: NonNullable<PlacedRun['run']['fan']>;
  machine: PlacedMachine;
  cordLength: number;
  name: string;
}

function measureRun(scene: Scene, run: PlacedRun): Measurement[] {
  const machine = scene.machines.find((item) => item.machine.id === run.run.machine);
  if (machine === undefined || machine.sheet.vent.kind !== 'direct') return [];
  const name = runName(scene, run);
  if (run.fan === null || run.run.fan === null) return [askFan(scene, run, name)];
  const fitted: Fitted = { scene, run, fan: run.fan, drawn: run.run.fan, machine, cordLength: machine.sheet.vent.cordLength, name };
  return [measurePlace(fitted), ...measureDrainHole(fitted), measureCord(fitted)];
}

function askFan(scene: Scene, run: PlacedRun, name: string): Measurement {
  return {
    part: 'place',
    subjects: [run.run.id, run.run.machine],
    place: wayPlace(run.points, run.run.diameter),
    value: null,
    limit: true,
    ask: { input: `fan of ${name}`, path: pathOf(scene.plan, 'runs', run.run.id, 'fan') },
    say: () => sentence(`${name} has no fan yet. Place it on the machine or above the ceiling.`),
  };
}

function measurePlace({ run, fan, name, ...fitted }: Fitted): Measurement {
  return {
    value: fan.isOnRun,
    limit: true,
    say: (f) =>
      sentence(
        fan.isOnRun
          ? `the fan sits ${f.length(fan.at)} from the collar; ${name} is ${f.length(run.length)} long.`
          : `the fan is drawn ${f.length(fan.at)} from the collar, and ${name} is only ${f.length(run.length)} long. Move it onto the run.`,
      ),
    repairs: () =>
      fan.isOnRun
        ? []
        : [
            {
              id: 'fan-onto-run',
              label: (f) => `Move the fan back to ${f.length(run.length)} from the collar`,
              edit: (draft) =>
                editRun(draft, run.run.id, (item) => {
                  if (item.fan !== null) item.fan.at = run.length;
                }),
            },
          ],
    ...about({ run, fan, name, ...fitted }, 'place'),
  };
}

/** Only a fan on its side needs a hole. */
function measureDrainHole(fitted: Fitted): Measurement[] {
  const { scene, run, drawn } = fitted;
  if (drawn.attitude !== 'on-side') return [];
  const common = { value: drawn.drainHole, limit: true, ...about(fitted, 'drain-hole') };
  if (drawn.drainHole === null) {
    const path = pathOf(scene.plan, 'runs', run.run.id, 'fan', 'drainHole');
    const say = () => 'The fan lies on its side. Has it a drain hole at its bottom? Without one it fills with water.';
    return [{ ask: { input: 'drain hole of the fan', path }, say, ...common }];
  }
  const say = () =>
    drawn.drainHole
      ? 'The fan lies on its side and has a drain hole at its bottom.'
      : 'The fan lies on its side and has no drain hole at its bottom; it would fill with water. Have one made, as the maker’s manual shows, with the power off.';
  return [{ say, repairs: () => (drawn.drainHole ? [] : [makeDrainHole(run)]), ...common }];
}

const makeDrainHole = ({ run }: PlacedRun) => ({
  id: 'make-drain-hole',
  label: () => 'Call for a drain hole at the fan’s bottom',
  edit: (draft: Scene['plan']) =>
    editRun(draft, run.id, ({ fan }) => {
      if (fan !== null) fan.drainHole = true;
    }),
});

/** A cord too short is no fault of the layout: it is field wiring, to be priced and done by the right trade. */
function measureCord(fitted: Fitted): Measurement {
  const { drawn, cordLength } = fitted;
  const straight = straightWay(fitted);
  const way = drawn.cordWay ?? straight;
  const reserve = cordReserve({ cordM: cordLength / 1000, wayM: way / 1000 });
  const isShort = reserve.ok && reserve.value < -1e-9;
  const common = { unit: 'mm', relation: 'at-most', limit: cordLength, severity: 'watch', ...about(fitted, 'cord') } as const;
  if (drawn.cordWay === null && !isShort) return { ...common, ...askCord(fitted, straight) };
  const least = drawn.cordWay === null ? 'at least ' : '';
  return {
    value: way,
    say: (f) =>
      isShort
        ? `The cord’s way is ${least}${f.length(way)} and the cord ${f.length(cordLength)}: ${f.length(way - cordLength)} short. Bring the fan nearer, or plan field wiring. ${WIRING}`
        : `The cord’s way is ${f.length(way)}; ${f.length(cordLength)} of cord come with the machine.`,
    ...common,
  };
}

function askCord({ scene, run, cordLength }: Fitted, straight: number) {
  return {
    value: null,
    ask: { input: 'way of the fan cord', path: pathOf(scene.plan, 'runs', run.run.id, 'fan', 'cordWay') },
    say: ((f) =>
      `The way of the fan’s cord is not known. In a straight line it is ${f.length(straight)}; the cord is ${f.length(cordLength)}. Measure it as the cord will lie.`) satisfies Measurement['say'],
  };
}

/** From the fan to where its signal leaves the machine: no cord can be shorter. */
function straightWay({ machine, fan, run }: Fitted): number {
  const signal = machine.connections.find(({ connection }) => connection.kind === 'vent-signal')?.point;
  const end = signal ?? machine.collar ?? run.points[0];
  return end === undefined ? 0 : distance3(end, fan.point);
}

const about = ({ run, fan }: Fitted, part: string) => ({
  part,
  subjects: [run.run.id, run.run.machine],
  place: pointPlace(fan.point),
});
