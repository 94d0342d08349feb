import type { Plan } from '../../../plan';
import {
  askFor,
  compute,
  createMessages,
  createRefusal,
  type FigureReading,
  type FigureRule,
  type Message,
  type NoParams,
  notesOf,
  readOf,
  refuse,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { needYear, runningCost, runningCostRecord, waterPerYearFigure as waterPerYear } from '../../water';
import { rule as energyPerYear } from './energy-per-year';
import { WATER_HEATING_INPUT } from './support/heatAsks';
import { isFedHot } from './support/yearEnergy';

export const rule: FigureRule = {
  id: 'running-cost',
  order: 420,
  title: 'Cost of water and energy',
  group: 'heat',
  unit: 'money',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** What is said of the cost. */
export interface RunningCostMessages {
  'running-cost/ask-price': { of: 'water' | 'electricity' | 'gas' };
  'running-cost/currency': { currency: string };
  'running-cost/alone': NoParams;
}

const say = createMessages<RunningCostMessages>();

/** Of a year, and of a hundred racks: one rack costs too little to be read. */
function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const subjects = [placed.machine.id];
  const amounts = needAmounts(scene, placed);
  const year = needYear(scene, subjects);
  const prices = needPrices(scene.plan, subjects, isFedHot(placed));
  return (['year', 'hundred-racks'] as const).map((part) => {
    if ('ask' in year) return { part, ...year.ask };
    if ('ask' in amounts) return { part, ...amounts.ask };
    if ('ask' in prices) return { part, ...prices.ask };
    if (part !== 'year' && year.racks === 0) return { part, ...refuse(subjects, createRefusal(rule, 'no-rack-in-year', {})) };
    const share = part === 'year' ? 1 : 100 / year.racks;
    const { waterM3, machineJ, heaterJ } = amounts;
    const isGas = scene.plan.tariff.waterHeatedBy === 'gas';
    const inputs = {
      waterM3: share * waterM3,
      electricityJ: share * (machineJ + (isGas ? 0 : heaterJ)),
      gasJ: share * (isGas ? heaterJ : 0),
      ...prices,
    };
    return {
      part,
      subjects,
      ...compute(runningCostRecord, runningCost, inputs),
      ...notesOf(currencyNote(scene.plan), say('running-cost/alone')),
    };
  });
}

interface Amounts {
  waterM3: number;
  machineJ: number;
  heaterJ: number;
}

/** Water and energy of a year, or the reading that asks for what is missing. */
function needAmounts(scene: Scene, placed: PlacedMachine): Amounts | { ask: FigureReading } {
  const { id } = placed.machine;
  const water = readOf(waterPerYear, scene, id);
  if (water.value === null) return { ask: water };
  const machine = readOf(energyPerYear, scene, id, 'machine');
  if (machine.value === null) return { ask: machine };
  const heater = isFedHot(placed) ? readOf(energyPerYear, scene, id, 'water-heater') : null;
  if (heater !== null && heater.value === null) return { ask: heater };
  return { waterM3: water.value, machineJ: machine.value, heaterJ: heater?.value ?? 0 };
}

type Prices = Record<'moneyPerM3' | 'moneyPerKwh' | 'moneyPerGasKwh', number>;

function needPrices({ tariff }: Plan, subjects: string[], isHeated: boolean): Prices | { ask: FigureReading } {
  const { water, electricity, gas, waterHeatedBy } = tariff;
  const ask = (input: Message, field: string) => ({ ask: askFor(subjects, input, ['tariff', field]) });
  const askPrice = (of: 'water' | 'electricity' | 'gas') => ask(say('running-cost/ask-price', { of }), of);
  if (water === null) return askPrice('water');
  if (electricity === null) return askPrice('electricity');
  if (isHeated && waterHeatedBy === null) return ask(WATER_HEATING_INPUT, 'waterHeatedBy');
  if (isHeated && waterHeatedBy === 'gas' && gas === null) return askPrice('gas');
  return { moneyPerM3: water, moneyPerKwh: electricity, moneyPerGasKwh: gas ?? 0 };
}

const currencyNote = ({ tariff: { currency } }: Plan) => (currency === '' ? null : say('running-cost/currency', { currency }));
