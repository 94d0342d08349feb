import type { Plan } from '../../../plan';
import { askFor, compute, type FigureReading, type FigureRule, type FormulaResult, refuse, withSources } from '../../../rules';
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

export const rule: FigureRule = {
  id: 'heater-needed',
  order: 290,
  title: 'Input that the water heater needs',
  group: 'heat',
  unit: 'W',
  derive: deriveReadings,
};

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
  return { subjects: [], ...heat(left.value, known.hotWaterC, known), note: noteFor(WITH_STORE, known) };
}

/** Without a store the water is warmed as it flows: to every sink at once, and never less than the busiest hour takes. */
function atOnce(scene: Scene, demand: FormulaResult, known: Heater): FigureReading {
  const draws = drawnAtOnce(scene);
  const flow = draws.ok ? instantDemand(draws.value) : draws;
  if (!flow.ok) return refuse([], flow.refusal);
  if (!demand.ok) return refuse([], demand.refusal);
  const answer = heat(Math.max(flow.value, demand.value), Math.max(known.hotWaterC, INSTANT_HEATER_WATER.min ?? 0), known);
  return { subjects: [], ...answer, how: withSources(answer.how, FIXTURE_DEMAND_SOURCE), note: noteFor(AT_ONCE, known) };
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
  if (hotWaterC === null) return { ask: askFor([], 'temperature of the hot water', ['supply', 'hotWaterC']) };
  if (coldWaterC === null) return { ask: askFor([], 'temperature of the cold water', ['supply', 'coldWaterC']) };
  if (pipes.storage === null) return { ask: askFor([], 'hot water in store, 0 for none', ['pipes', 'storage']) };
  if (tariff.waterHeatedBy === null) return { ask: askFor([], 'way in which the water is heated', ['tariff', 'waterHeatedBy']) };
  return { storage: pipes.storage, hotWaterC, coldWaterC, heatedBy: tariff.waterHeatedBy };
}

const noteFor = (note: string, { heatedBy }: Heater): string => (heatedBy === 'gas' ? `${note} ${BY_GAS}` : note);

/** San Joaquin County CA, form EHD 16-01; Monterey County CA, form PC-HWH. */
const BY_GAS = 'Of the gas 70 % is taken to reach the water, by the stricter of two county forms; the other takes about 75 %.';

const OTHERS = 'For the fixtures of this room alone; other rooms on the same heater come on top.';

/** Shares: California directors of environmental health; peaks: Monterey County CA, form PC-HWH. */
const WITH_STORE = `${OTHERS} All of their demand counts, as with three meals a day (90 % with moderate use, 80 % with single-service ware), over a peak of 2 h, as with ware that is washed (1 h with single-service ware), to which the tank gives 0.7 of what it holds.`;

const AT_ONCE = `${OTHERS} Nothing is in store, so the heater warms at once 2 gpm for each sink, to 120 °F at least, and the rinse of each machine that is fed hot, as fast as its data sheet has it.`;
