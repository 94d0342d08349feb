import { askHookUp, compute, type FigureReading, type FigureRule, refuse, withSources } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { voltageDrop, voltageDropRecord } from '../formulas/voltageDrop';
import { wireResistance, wireResistanceRecord } from '../formulas/wireResistance';
import { askVersion, circuitCurrent, POWER_CAUTION, versionOf } from './support/power';
import { wireWay } from './support/wireWay';

export const rule: FigureRule = {
  id: 'voltage-drop',
  order: 710,
  title: 'Voltage lost in the machine’s wires',
  group: 'power',
  unit: 'V',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** Of the wire of the plan, along the way of the plan or one drawn at right angles, at the whole current of the machine. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const version = versionOf(placed);
  if (version === undefined) return askVersion(placed);
  const { wire } = placed.machine.hookUp;
  if (wire === null) return askHookUp(placed, 'wire');
  const way = wireWay(scene, placed);
  if (way === null) return askHookUp(placed, 'wireWay');
  const subjects = [placed.machine.id];
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
  return { subjects, ...answer, how, note: `${way.note} ${RESISTIVE} ${POWER_CAUTION}` };
}

const RESISTIVE = 'As for heaters, power factor 1, and by the resistance of copper at 75 °C from memory.';
