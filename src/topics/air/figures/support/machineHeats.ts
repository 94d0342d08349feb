import {
  compute,
  createMessages,
  type FigureReading,
  type FormulaResult,
  type NoParams,
  needDemand,
  notesOf,
  refuse,
} from '../../../../rules';
import { coveringHoods, isUnderHood, type PlacedMachine, type Scene } from '../../../../scene';
import { ratedRate } from '../../../line';
import {
  LEAST_DOOR_DISHES,
  type MachineHeat,
  type MachineHeatInputs,
  machineHeat,
  machineLatentRecord,
  machineSensibleRecord,
} from '../../formulas/machineHeat';

/** Heat of each machine to the room: sensible, then latent. */
export const machineHeats = (scene: Scene): FigureReading[] => scene.machines.flatMap((machine) => deriveMachine(scene, machine));

/** How the heat of a machine was found. */
export interface MachineHeatGainMessages {
  'machine-heat-gain/stated': NoParams;
  'machine-heat-gain/vapour-way': { way: MachineHeatInputs['vapourWay'] };
  'machine-heat-gain/table': { table: MachineHeatInputs['table'] };
  'machine-heat-gain/slow': { dishesPerHour: number };
  'machine-heat-gain/fed-wrong': NoParams;
}

const say = createMessages<MachineHeatGainMessages>();

/**
 * Whether a limit that binds may stop by the heat of these machines: not where one that wins back its heat is counted as if it won
 * nothing, which is the most that it can be, nor by the later table, which was not read.
 */
export const isHeatSure = (scene: Scene): boolean =>
  scene.machines.every((machine) => {
    const from = findHeat(scene, machine);
    return from.kind === 'stated' || (from.kind === 'row' && from.inputs.table === '2001' && from.inputs.vapourWay !== 'condensing');
  });

/** Where a machine's heat is taken from. */
type HeatFrom =
  | ({ kind: 'stated' } & MachineHeat)
  | { kind: 'row'; inputs: MachineHeatInputs; slow: boolean; stated: MachineHeat | null }
  | { kind: 'open'; reading: FigureReading };

function findHeat(scene: Scene, placed: PlacedMachine): HeatFrom {
  const { machine, sheet } = placed;
  const vapourWay = findVapourWay(scene, placed);
  const stated = statedHeat(sheet);
  if (vapourWay === 'condensing' && stated !== null) return { kind: 'stated', ...stated };
  const demand = needDemand(scene.plan, [machine.id], 'piecesPerRack');
  if ('ask' in demand) return { kind: 'open', reading: demand.ask };
  const racks = ratedRate(placed);
  if (!racks.ok) return { kind: 'open', reading: refuse([machine.id], racks.refusal) };
  const dishes = racks.value * demand.known.piecesPerRack;
  const dishesPerHour = Math.max(LEAST_DOOR_DISHES, dishes);
  const inputs = { machine: 'door', sanitizing: sheet.sanitizing, vapourWay, dishesPerHour } as const;
  return {
    kind: 'row',
    inputs: { table: chooseTable(scene, inputs), ...inputs },
    slow: dishes < LEAST_DOOR_DISHES,
    stated: isFedWrong(placed) ? stated : null,
  };
}

/** What a machine that wins back its heat still gives, by its data sheet. */
function statedHeat({ vent }: PlacedMachine['sheet']): MachineHeat | null {
  if (vent.kind !== 'recovery' || vent.sensible === null || vent.latent === null) return null;
  return { sensibleW: vent.sensible, latentW: vent.latent };
}

type Table = MachineHeatInputs['table'];

/** The edition that the plan goes by; without a choice the one whose row gives more in all. */
function chooseTable({ plan }: Scene, inputs: Omit<MachineHeatInputs, 'table'>): Table {
  if (plan.codes.heatTable !== 'strictest') return plan.codes.heatTable;
  const total = (table: Table) => {
    const heat = machineHeat({ table, ...inputs });
    return heat.ok ? heat.value.sensibleW + heat.value.latentW : Number.POSITIVE_INFINITY;
  };
  return total('2009-2017') > total('2001') ? '2009-2017' : '2001';
}

function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const from = findHeat(scene, placed);
  const subjects = [placed.machine.id];
  if (from.kind === 'open') return PARTS.map((part) => ({ ...from.reading, part }));
  if (from.kind === 'stated')
    return PARTS.map((part) => ({ part, subjects, value: choose(part, from), how: null, notes: [say('machine-heat-gain/stated')] }));
  const { inputs, slow, stated } = from;
  const notes = notesOf(
    say('machine-heat-gain/vapour-way', { way: inputs.vapourWay }),
    say('machine-heat-gain/table', { table: inputs.table }),
    slow ? say('machine-heat-gain/slow', { dishesPerHour: LEAST_DOOR_DISHES }) : null,
    isFedWrong(placed) ? say('machine-heat-gain/fed-wrong') : null,
  );
  return PARTS.map((part): FigureReading => {
    const answer = computePart(part, inputs);
    const least = stated === null ? 0 : choose(part, stated);
    if (answer.value === null || answer.value >= least) return { part, subjects, ...answer, ...notes };
    return { part, subjects, value: least, how: null, notes: [say('machine-heat-gain/stated'), say('machine-heat-gain/fed-wrong')] };
  });
}

const PARTS = ['sensible', 'latent'] as const;
type Part = (typeof PARTS)[number];

const choose = (part: Part, { sensibleW, latentW }: MachineHeat) => (part === 'sensible' ? sensibleW : latentW);

function computePart(part: Part, inputs: MachineHeatInputs) {
  const run = (given: MachineHeatInputs): FormulaResult => {
    const heat = machineHeat(given);
    return heat.ok ? { ok: true, value: choose(part, heat.value) } : heat;
  };
  return compute(part === 'sensible' ? machineSensibleRecord : machineLatentRecord, run, inputs);
}

/** Made to win back its heat with cold water and fed with hot, a machine takes up none of its vapour, whatever its sheet states. */
const isFedWrong = ({ machine, sheet }: PlacedMachine): boolean =>
  sheet.vent.kind === 'recovery' && sheet.waterFeed === 'cold' && machine.hookUp.water === 'hot';

const drawsOver = (scene: Scene, machine: string): boolean =>
  coveringHoods(scene).some(({ hood, covers }) => hood.exhaust !== 0 && covers.some((covered) => covered.machine === machine));

/** What takes the vapour in this plan: a vent that is not drawn takes nothing, nor does a hood that draws no air. */
function findVapourWay(scene: Scene, placed: PlacedMachine): MachineHeatInputs['vapourWay'] {
  const { machine, sheet } = placed;
  if (isUnderHood(scene, machine.id) && drawsOver(scene, machine.id)) return 'hood';
  if (sheet.vent.kind === 'recovery') return isFedWrong(placed) ? 'none' : 'condensing';
  return sheet.vent.kind === 'direct' && scene.plan.runs.some((run) => run.machine === machine.id) ? 'direct-vent' : 'none';
}
