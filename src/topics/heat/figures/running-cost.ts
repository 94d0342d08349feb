import type { Plan } from '../../../plan';
import { askFor, compute, createRefusal, type FigureReading, type FigureRule, noteOf, readOf, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { needYear, runningCost, runningCostRecord, waterPerYearFigure as waterPerYear } from '../../water';
import { rule as energyPerYear } from './energy-per-year';
import { isFedHot } from './support/yearEnergy';

export const rule: FigureRule = {
  id: 'running-cost',
  order: 420,
  title: 'Cost of water and energy',
  group: 'heat',
  unit: 'money',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

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
    return { part, subjects, ...compute(runningCostRecord, runningCost, inputs), ...noteOf(currencyNote(scene.plan), ALONE) };
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
  const ask = (input: string, field: string) => ({ ask: askFor(subjects, input, ['tariff', field]) });
  if (water === null) return ask('price of water and sewer', 'water');
  if (electricity === null) return ask('price of electricity', 'electricity');
  if (isHeated && waterHeatedBy === null) return ask('way in which the water is heated', 'waterHeatedBy');
  if (isHeated && waterHeatedBy === 'gas' && gas === null) return ask('price of gas', 'gas');
  return { moneyPerM3: water, moneyPerKwh: electricity, moneyPerGasKwh: gas ?? 0 };
}

const currencyNote = ({ tariff }: Plan) => (tariff.currency === '' ? null : `In ${tariff.currency}.`);

const ALONE =
  'Water and energy of the machine alone, as counted for the year; the pre-rinse spray, chemicals, labour and upkeep come on top.';
