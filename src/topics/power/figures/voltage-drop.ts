import {
  type Ask,
  askFor,
  compute,
  createMessages,
  type FigureReading,
  type FigureRule,
  type NoParams,
  refuse,
  withSources,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { voltageDrop, voltageDropRecord } from '../formulas/voltageDrop';
import { wireResistance, wireResistanceRecord } from '../formulas/wireResistance';
import { askHookUp } from './support/askHookUp';
import { askVersion, circuitCurrent, POWER_CAUTION, versionOf } from './support/power';
import { type WireWay, wireWay } from './support/wireWay';

export const rule: FigureRule = {
  id: 'voltage-drop',
  order: 710,
  title: 'Voltage lost in the machine’s wires',
  group: 'power',
  unit: 'V',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface VoltageDropFigureMessages {
  'voltage-drop/way': Pick<WireWay, 'from'>;
  'voltage-drop/resistive': NoParams;
}

const say = createMessages<VoltageDropFigureMessages>();

/** Of the wire of the plan, along the way of the plan or one drawn at right angles, at the whole current of the machine. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const version = versionOf(placed);
  if (version === undefined) return askVersion(placed);
  const subjects = [placed.machine.id];
  const { wire } = placed.machine.hookUp;
  if (wire === null) return waitFor(subjects, askHookUp(placed, 'wire'));
  const way = wireWay(scene, placed);
  if (way === null) return waitFor(subjects, askHookUp(placed, 'wireWay'));
  const [current, resistance] = [circuitCurrent(version), wireResistance({ size: wire })];
  if (!current.ok) return refuse(subjects, current.refusal);
  if (!resistance.ok) return refuse(subjects, resistance.refusal);
  const answer = compute(voltageDropRecord, voltageDrop, {
    currentA: current.value,
    lengthM: way.lengthM,
    resistanceOhmPerM: resistance.value,
    reactanceOhmPerM: 0,
    powerFactor: 1,
    circuit: version.phase === 3 ? 'three-phase' : 'single-phase',
  });
  const how = withSources(answer.how, ...wireResistanceRecord.source);
  return { subjects, ...answer, how, notes: [say('voltage-drop/way', { from: way.from }), say('voltage-drop/resistive'), POWER_CAUTION] };
}

const waitFor = (subjects: string[], { input, path }: Ask) => askFor(subjects, input, path);
