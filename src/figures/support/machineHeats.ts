import {
  LEAST_DOOR_DISHES,
  type MachineHeat,
  type MachineHeatInputs,
  machineHeat,
  machineLatentRecord,
  machineSensibleRecord,
  type Outcome,
} from '../../engineering';
import type { Appliance, Scene } from '../../scene';
import { compute } from '../compute';
import type { FigureReading } from '../types';
import { needDemand } from './demand';
import { ratedRate } from './rackCycle';
import { noteOf, refuse } from './readings';

/** Heat of each machine to the room: sensible, then latent. */
export const machineHeats = (scene: Scene): FigureReading[] => scene.appliances.flatMap((machine) => deriveMachine(scene, machine));

function deriveMachine(scene: Scene, placed: Appliance): FigureReading[] {
  const { machine, sheet } = placed;
  const demand = needDemand(scene.plan, [machine.id], 'piecesPerRack');
  if ('ask' in demand) return PARTS.map((part) => ({ part, ...demand.ask }));
  const racks = ratedRate(placed);
  if (!racks.ok) return PARTS.map((part) => ({ part, ...refuse([machine.id], racks.reason) }));
  const dishesPerHour = racks.value * demand.known.piecesPerRack;
  const inputs: MachineHeatInputs = {
    table: '2001',
    machine: 'door',
    sanitizing: sheet.sanitizing,
    vapourWay: findVapourWay(scene, placed),
    dishesPerHour: Math.max(LEAST_DOOR_DISHES, dishesPerHour),
  };
  const slow = dishesPerHour < LEAST_DOOR_DISHES ? SLOW_NOTE : null;
  return PARTS.map((part) => ({
    part,
    subjects: [machine.id],
    ...computePart(part, inputs),
    ...noteOf(NOTES[inputs.vapourWay], slow),
  }));
}

const SLOW_NOTE = `It washes fewer dishes than the ${LEAST_DOOR_DISHES} an hour at which the table begins, and is counted as that many: the most that it can be.`;

const PARTS = ['sensible', 'latent'] as const;
type Part = (typeof PARTS)[number];

function computePart(part: Part, inputs: MachineHeatInputs) {
  const choose = ({ sensibleW, latentW }: MachineHeat) => (part === 'sensible' ? sensibleW : latentW);
  const run = (given: MachineHeatInputs): Outcome => {
    const heat = machineHeat(given);
    return heat.ok ? { ok: true, value: choose(heat.value) } : heat;
  };
  return compute(part === 'sensible' ? machineSensibleRecord : machineLatentRecord, run, inputs);
}

const NOTES: Record<MachineHeatInputs['vapourWay'], string> = {
  none: 'While it washes rack after rack; nothing takes the vapour.',
  hood: 'While it washes rack after rack, under a hood.',
  'direct-vent': 'While it washes rack after rack; the vent is counted as a hood.',
  condensing: 'While it washes rack after rack; what the machine wins back is not taken off: this is the most that it can be.',
};

/** What takes the vapour in this plan: a vent that is not drawn takes nothing. */
function findVapourWay(scene: Scene, { machine, sheet }: Appliance): MachineHeatInputs['vapourWay'] {
  if (scene.hooded.includes(machine.id)) return 'hood';
  if (sheet.vent.kind === 'recovery') return 'condensing';
  return sheet.vent.kind === 'direct' && scene.plan.runs.some((run) => run.machine === machine.id) ? 'direct-vent' : 'none';
}
