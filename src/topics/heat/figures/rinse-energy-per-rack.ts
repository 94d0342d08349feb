import { askFor, compute, type FigureReading, type FigureRule, noteOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { waterHeating, waterHeatingRecord } from '../../water';
import { HEATER_EFFICIENCY, hotRinseMachines } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'rinse-energy-per-rack',
  order: 310,
  title: 'Heat of the rinse of a rack, from cold',
  group: 'heat',
  unit: 'J',
  derive: (scene) => hotRinseMachines(scene).map((placed) => deriveReading(scene, placed)),
};

function deriveReading({ plan }: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const { coldWaterC } = plan.supply;
  if (coldWaterC === null) return askFor(subjects, 'temperature of the cold water', ['supply', 'coldWaterC']);
  const inputs = {
    waterM3: toSI(placed.sheet.rinseWaterL, 'L'),
    riseK: Math.max(0, placed.sheet.temperatures.rinseC - coldWaterC),
    efficiency: HEATER_EFFICIENCY,
    constants: 'sizing' as const,
  };
  return {
    subjects,
    ...compute(waterHeatingRecord, waterHeating, inputs),
    ...noteOf(ELECTRIC, placed.sheet.vent.kind === 'recovery' ? BEFORE : null),
  };
}

const BEFORE = 'What the machine wins back is not taken off.';

const ELECTRIC = 'Heated by electricity from the cold supply to the rinse, in the building and in the booster together.';
