import { demandAfterStorage, type HeaterRule, heaterInput, heaterInputRecord, hotWaterDemand, type Outcome } from '../../engineering';
import type { Plan } from '../../plan';
import type { Scene } from '../../scene';
import { toSI } from '../../units';
import { compute } from '../compute';
import { demandInputs, hotWaterFixtures } from '../support/fixtures';
import { askFor, refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'heater-needed',
  title: 'Input that the water heater needs',
  group: 'heat',
  unit: 'W',
  derive: deriveReadings,
};

function deriveReadings(scene: Scene): FigureReading[] {
  const fixtures = hotWaterFixtures(scene);
  if (!fixtures.ok) return [refuse([], fixtures.reason)];
  if (fixtures.value.length === 0) return [];
  const known = needHeater(scene.plan);
  if ('ask' in known) return [known.ask];
  const left = leftToHeater(hotWaterDemand(demandInputs(fixtures.value)), known.storage);
  if (!left.ok) return [refuse([], left.reason)];
  const inputs = { demandM3S: left.value, riseK: known.riseK, rule: RULES[known.heatedBy] };
  return [{ subjects: [], ...compute(heaterInputRecord, heaterInput, inputs), note: NOTE }];
}

type HeatedBy = NonNullable<Plan['tariff']['waterHeatedBy']>;

/** The strictest of the county forms for each. */
const RULES: Readonly<Record<HeatedBy, HeaterRule>> = { gas: 'gas-70', electricity: 'electric-98' };

/** Ware that is washed has a peak of 2 h: Monterey County CA, form PC-HWH (W-HF5). */
const PEAK = toSI(2, 'h');

const leftToHeater = (demand: Outcome, storage: number): Outcome =>
  demand.ok ? demandAfterStorage({ demandM3S: demand.value, tankM3: storage, peakS: PEAK }) : demand;

interface Heater {
  storage: number;
  riseK: number;
  heatedBy: HeatedBy;
}

/** What is known of the heater, or the reading that asks for the first that is not. */
function needHeater({ supply, pipes, tariff }: Plan): Heater | { ask: FigureReading } {
  const { hotWaterC, coldWaterC } = supply;
  if (hotWaterC === null) return { ask: askFor([], 'temperature of the hot water', ['supply', 'hotWaterC']) };
  if (coldWaterC === null) return { ask: askFor([], 'temperature of the cold water', ['supply', 'coldWaterC']) };
  if (pipes.storage === null) return { ask: askFor([], 'hot water in store, 0 for none', ['pipes', 'storage']) };
  if (tariff.waterHeatedBy === null) return { ask: askFor([], 'way in which the water is heated', ['tariff', 'waterHeatedBy']) };
  return { storage: pipes.storage, riseK: Math.max(0, hotWaterC - coldWaterC), heatedBy: tariff.waterHeatedBy };
}

const NOTE =
  'For the fixtures of this room alone, in a peak of 2 h to which the tank gives 0.7 of what it holds. Other rooms on the same heater come on top.';
