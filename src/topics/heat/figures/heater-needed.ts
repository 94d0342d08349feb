import type { Plan } from '../../../plan';
import {
  askFor,
  compute,
  createMessages,
  type FigureReading,
  type FigureRule,
  type FormulaResult,
  type Message,
  type NoParams,
  notesOf,
  refuse,
  withSources,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { toSI } from '../../../units';
import {
  demandAfterStorage,
  demandInputs,
  drawnAtOnce,
  FIXTURE_DEMAND_SOURCE,
  type HeaterRule,
  heaterInput,
  heaterInputRecord,
  hotWaterDemand,
  hotWaterFixtures,
  INSTANT_HEATER_WATER,
  instantDemand,
} from '../../water';
import { WATER_HEATING_INPUT, waterTemperatureInput } from './support/heatAsks';

export const rule: FigureRule = {
  id: 'heater-needed',
  order: 290,
  title: 'Input that the water heater needs',
  group: 'heat',
  unit: 'W',
  derive: deriveReadings,
};

/** What is said of how it was found. */
export interface HeaterNeededMessages {
  'heater-needed/ask-storage': NoParams;
  'heater-needed/this-room': NoParams;
  'heater-needed/with-store': NoParams;
  'heater-needed/at-once': NoParams;
  'heater-needed/by-gas': NoParams;
}

const say = createMessages<HeaterNeededMessages>();

function deriveReadings(scene: Scene): FigureReading[] {
  const fixtures = hotWaterFixtures(scene);
  if (!fixtures.ok) return [refuse([], fixtures.refusal)];
  if (fixtures.value.length === 0) return [];
  const known = needHeater(scene.plan);
  if ('ask' in known) return [known.ask];
  const demand = hotWaterDemand(demandInputs(fixtures.value));
  return [known.storage > 0 ? withStore(demand, known) : atOnce(scene, demand, known)];
}

function withStore(demand: FormulaResult, known: Heater): FigureReading {
  const left = leftToHeater(demand, known.storage);
  if (!left.ok) return refuse([], left.refusal);
  return { subjects: [], ...heat(left.value, known.hotWaterC, known), ...notesFor(say('heater-needed/with-store'), known) };
}

/** Without a store the water is warmed as it flows: to every sink at once, and never less than the busiest hour takes. */
function atOnce(scene: Scene, demand: FormulaResult, known: Heater): FigureReading {
  const draws = drawnAtOnce(scene);
  const flow = draws.ok ? instantDemand(draws.value) : draws;
  if (!flow.ok) return refuse([], flow.refusal);
  if (!demand.ok) return refuse([], demand.refusal);
  const answer = heat(Math.max(flow.value, demand.value), Math.max(known.hotWaterC, INSTANT_HEATER_WATER.min ?? 0), known);
  return { subjects: [], ...answer, how: withSources(answer.how, FIXTURE_DEMAND_SOURCE), ...notesFor(say('heater-needed/at-once'), known) };
}

const heat = (demandM3S: number, hotC: number, { coldWaterC, heatedBy }: Heater) =>
  compute(heaterInputRecord, heaterInput, { demandM3S, riseK: Math.max(0, hotC - coldWaterC), rule: RULES[heatedBy] });

type HeatedBy = NonNullable<Plan['tariff']['waterHeatedBy']>;

/** The strictest of the county forms for each. */
const RULES: Readonly<Record<HeatedBy, HeaterRule>> = { gas: 'gas-70', electricity: 'electric-98' };

/** Ware that is washed has a peak of 2 h: Monterey County CA, form PC-HWH. */
const PEAK = toSI(2, 'h');

const leftToHeater = (demand: FormulaResult, storage: number): FormulaResult =>
  demand.ok ? demandAfterStorage({ demandM3S: demand.value, tankM3: storage, peakS: PEAK }) : demand;

interface Heater {
  /** 0: it warms the water as it flows. */
  storage: number;
  hotWaterC: number;
  coldWaterC: number;
  heatedBy: HeatedBy;
}

/** What is known of the heater, or the reading that asks for the first that is not. */
function needHeater({ supply, pipes, tariff }: Plan): Heater | { ask: FigureReading } {
  const { hotWaterC, coldWaterC } = supply;
  if (hotWaterC === null) return { ask: askFor([], waterTemperatureInput('hot'), ['supply', 'hotWaterC']) };
  if (coldWaterC === null) return { ask: askFor([], waterTemperatureInput('cold'), ['supply', 'coldWaterC']) };
  if (pipes.storage === null) return { ask: askFor([], say('heater-needed/ask-storage'), ['pipes', 'storage']) };
  if (tariff.waterHeatedBy === null) return { ask: askFor([], WATER_HEATING_INPUT, ['tariff', 'waterHeatedBy']) };
  return { storage: pipes.storage, hotWaterC, coldWaterC, heatedBy: tariff.waterHeatedBy };
}

const notesFor = (demand: Message, { heatedBy }: Heater) =>
  notesOf(say('heater-needed/this-room'), demand, heatedBy === 'gas' ? say('heater-needed/by-gas') : null);
