import {
  type FormulaRecord,
  type MachineHeat,
  type MachineHeatInputs,
  machineHeat,
  machineLatentRecord,
  machineSensibleRecord,
  rackRate,
} from '../../engineering';
import type { PlacedMachine, Scene } from '../../scene';
import { compute } from '../compute';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'machine-heat-gain',
  title: 'Heat of the machine to the room',
  group: 'air',
  unit: 'W',
  derive: (scene) => scene.machines.flatMap((machine) => deriveMachine(scene, machine)),
};

function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const { machine, sheet } = placed;
  const { piecesPerRack } = scene.plan.demand;
  if (piecesPerRack === null) {
    const ask = { input: 'pieces a rack', path: ['demand', 'piecesPerRack'] };
    return (['sensible', 'latent'] as const).map((part) => ({ part, subjects: [machine.id], value: null, ask, how: null }));
  }
  const { washS, rinseS, dwellS, loadS } = sheet.cycle;
  const racks = rackRate({ racksPerCycle: 1, washS, rinseS, dwellS, loadS });
  const inputs: MachineHeatInputs = {
    table: '2001',
    machine: 'door',
    sanitizing: sheet.sanitizing,
    vapourWay: findVapourWay(scene, placed),
    dishesPerHour: racks.ok ? racks.value * piecesPerRack : Number.NaN,
  };
  return [
    readingOf('sensible', machineSensibleRecord, ({ sensibleW }) => sensibleW, inputs, machine.id),
    readingOf('latent', machineLatentRecord, ({ latentW }) => latentW, inputs, machine.id),
  ];
}

function readingOf(
  part: string,
  record: FormulaRecord<MachineHeatInputs>,
  choose: (heat: MachineHeat) => number,
  inputs: MachineHeatInputs,
  id: string,
): FigureReading {
  const run = (given: MachineHeatInputs) => {
    const heat = machineHeat(given);
    return heat.ok ? { ok: true as const, value: choose(heat.value) } : heat;
  };
  return { part, subjects: [id], ...compute(record, run, inputs), note: NOTES[inputs.vapourWay] };
}

const NOTES: Record<MachineHeatInputs['vapourWay'], string> = {
  none: 'While it washes rack after rack; nothing takes the vapour.',
  hood: 'While it washes rack after rack, under a hood.',
  'direct-vent': 'While it washes rack after rack; the vent is counted as a hood.',
  condensing: 'While it washes rack after rack; what the machine wins back is not taken off: this is the most that it can be.',
};

/** What takes the vapour in this plan: a vent that is not drawn takes nothing. */
function findVapourWay(scene: Scene, { machine, sheet }: PlacedMachine): MachineHeatInputs['vapourWay'] {
  if (scene.hoods.some(({ covers }) => covers.some((cover) => cover.machine === machine.id))) return 'hood';
  if (sheet.vent.kind === 'recovery') return 'condensing';
  return sheet.vent.kind === 'direct' && scene.runs.some(({ run }) => run.machine === machine.id) ? 'direct-vent' : 'none';
}
