import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { waterHeating, waterHeatingRecord } from '../../water';
import { waterTemperatureInput } from './support/heatAsks';
import { HEATER_EFFICIENCY, hotRinseMachines } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'rinse-energy-per-rack',
  order: 310,
  title: 'Heat of the rinse of a rack, from cold',
  group: 'heat',
  unit: 'J',
  derive: (scene) => hotRinseMachines(scene).map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface RinseEnergyPerRackMessages {
  'rinse-energy-per-rack/electric': NoParams;
  'rinse-energy-per-rack/before-recovery': NoParams;
}

const say = createMessages<RinseEnergyPerRackMessages>();

function deriveReading({ plan }: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const { coldWaterC } = plan.supply;
  if (coldWaterC === null) return askFor(subjects, waterTemperatureInput('cold'), ['supply', 'coldWaterC']);
  const inputs = {
    waterM3: toSI(placed.sheet.rinseWaterL, 'L'),
    riseK: Math.max(0, placed.sheet.temperatures.rinseC - coldWaterC),
    efficiency: HEATER_EFFICIENCY,
    constants: 'sizing' as const,
  };
  return {
    subjects,
    ...compute(waterHeatingRecord, waterHeating, inputs),
    ...notesOf(
      say('rinse-energy-per-rack/electric'),
      placed.sheet.vent.kind === 'recovery' ? say('rinse-energy-per-rack/before-recovery') : null,
    ),
  };
}
