import { distance3 } from '../../../geometry';
import { pathOf } from '../../../plan';
import {
  type Check,
  createMessages,
  editRun,
  type Measurement,
  type Name,
  type NoParams,
  nameRun,
  pointPlace,
  type Repair,
  wayPlace,
} from '../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../scene';
import { cordReserve } from '../formulas/cordReserve';

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

/** Lengths in mm; `at`: from the collar along the run. */
export interface FanOnRunMessages {
  'fan-on-run/ask-fan': { run: Name };
  'fan-on-run/no-fan': { run: Name };
  'fan-on-run/on-run': { run: Name; at: number; length: number };
  'fan-on-run/beyond-run': { run: Name; at: number; length: number };
  'fan-on-run/repair-fan-onto-run': { length: number };
  'fan-on-run/ask-drain-hole': NoParams;
  'fan-on-run/drain-hole-unknown': NoParams;
  'fan-on-run/drain-hole': NoParams;
  'fan-on-run/no-drain-hole': NoParams;
  'fan-on-run/repair-make-drain-hole': NoParams;
  'fan-on-run/ask-cord-way': NoParams;
  'fan-on-run/cord-way-unknown': { straight: number; cord: number };
  'fan-on-run/cord-reaches': { way: number; cord: number };
  /** `isLeast`: the way is that of a straight line, and may be longer. */
  'fan-on-run/cord-short': { way: number; cord: number; isLeast: boolean };
}

const say = createMessages<FanOnRunMessages>();

/** A fan with its run and machine. */
interface Fitted {
  scene: Scene;
  run: PlacedRun;
  fan: NonNullable<PlacedRun['fan']>;
  drawn: NonNullable<PlacedRun['run']['fan']>;
  machine: PlacedMachine;
  cordLength: number;
  name: Name;
}

function measureRun(scene: Scene, run: PlacedRun): Measurement[] {
  const machine = scene.machines.find((item) => item.machine.id === run.run.machine);
  if (machine === undefined || machine.sheet.vent.kind !== 'direct') return [];
  const name = nameRun(scene, run);
  if (run.fan === null || run.run.fan === null) return [askFan(scene, run, name)];
  const fitted: Fitted = { scene, run, fan: run.fan, drawn: run.run.fan, machine, cordLength: machine.sheet.vent.cordLength, name };
  return [measurePlace(fitted), ...measureDrainHole(fitted), measureCord(fitted)];
}

function askFan(scene: Scene, run: PlacedRun, name: Name): Measurement {
  return {
    part: 'place',
    subjects: [run.run.id, run.run.machine],
    place: wayPlace(run.points, run.run.diameter),
    value: null,
    limit: true,
    ask: { input: say('fan-on-run/ask-fan', { run: name }), path: pathOf(scene.plan, 'runs', run.run.id, 'fan') },
    message: say('fan-on-run/no-fan', { run: name }),
  };
}

function measurePlace(fitted: Fitted): Measurement {
  const { run, fan, name } = fitted;
  const message = say(fan.isOnRun ? 'fan-on-run/on-run' : 'fan-on-run/beyond-run', { run: name, at: fan.at, length: run.length });
  const common = { value: fan.isOnRun, limit: true, message, ...about(fitted, 'place') };
  return fan.isOnRun ? common : { ...common, repairs: { ids: ['fan-onto-run'], find: () => [moveOntoRun(run)] } };
}

const moveOntoRun = ({ run, length }: PlacedRun): Repair => ({
  id: 'fan-onto-run',
  label: say('fan-on-run/repair-fan-onto-run', { length }),
  edit: (draft) =>
    editRun(draft, run.id, ({ fan }) => {
      if (fan !== null) fan.at = length;
    }),
});

/** Only a fan on its side needs a hole. */
function measureDrainHole(fitted: Fitted): Measurement[] {
  const { scene, run, drawn } = fitted;
  if (drawn.attitude !== 'on-side') return [];
  const common = { value: drawn.drainHole, limit: true, ...about(fitted, 'drain-hole') };
  if (drawn.drainHole === null) {
    const path = pathOf(scene.plan, 'runs', run.run.id, 'fan', 'drainHole');
    return [{ ask: { input: say('fan-on-run/ask-drain-hole'), path }, message: say('fan-on-run/drain-hole-unknown'), ...common }];
  }
  if (drawn.drainHole) return [{ message: say('fan-on-run/drain-hole'), ...common }];
  const repairs = { ids: ['make-drain-hole'], find: () => [makeDrainHole(run)] };
  return [{ message: say('fan-on-run/no-drain-hole'), repairs, ...common }];
}

const makeDrainHole = ({ run }: PlacedRun): Repair => ({
  id: 'make-drain-hole',
  label: say('fan-on-run/repair-make-drain-hole'),
  edit: (draft) =>
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
  const message = isShort
    ? say('fan-on-run/cord-short', { way, cord: cordLength, isLeast: drawn.cordWay === null })
    : say('fan-on-run/cord-reaches', { way, cord: cordLength });
  return { value: way, message, ...common };
}

function askCord({ scene, run, cordLength }: Fitted, straight: number): Pick<Measurement, 'value' | 'ask' | 'message'> {
  return {
    value: null,
    ask: { input: say('fan-on-run/ask-cord-way'), path: pathOf(scene.plan, 'runs', run.run.id, 'fan', 'cordWay') },
    message: say('fan-on-run/cord-way-unknown', { straight, cord: cordLength }),
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
