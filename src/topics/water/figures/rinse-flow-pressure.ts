import { askFor, createMessages, type Derivation, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { FOOD_CODE_RINSE_PRESSURE, judgeRinsePressure, OLDER_RINSE_PRESSURE } from '../formulas/rinsePressure';

export const rule: FigureRule = {
  id: 'rinse-flow-pressure',
  order: 210,
  title: 'Flow pressure of the rinse',
  group: 'water',
  unit: 'Pa',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** How it stands to the bounds. */
export interface RinseFlowPressureMessages {
  'rinse-flow-pressure/ask-at-stub': NoParams;
  'rinse-flow-pressure/bounds': { isWithinFoodCode: boolean; isWithinOlder: boolean };
  'rinse-flow-pressure/at-stub': NoParams;
  'rinse-flow-pressure/hot-rinses-alone': NoParams;
}

const message = createMessages<RinseFlowPressureMessages>();

/** The pressure while water flows. */
export const STUB_PRESSURE_INPUT = message('rinse-flow-pressure/ask-at-stub');

/** What was measured at the stub, beside the bounds; nothing is computed. */
function deriveReading({ plan }: Scene, { machine, sheet }: PlacedMachine): FigureReading {
  const subjects = [machine.id];
  const kPa = plan.supply.flowPressureKpa;
  if (kPa === null) return askFor(subjects, STUB_PRESSURE_INPUT, ['supply', 'flowPressureKpa']);
  const value = toSI(kPa, 'kPa');
  const atStub = message('rinse-flow-pressure/at-stub');
  if (sheet.sanitizing === 'chemical')
    return { subjects, value, how: null, notes: [atStub, message('rinse-flow-pressure/hot-rinses-alone')] };
  return { subjects, value, how: HOW, notes: [boundsNote(value), atStub] };
}

const boundsNote = (pressurePa: number) =>
  message('rinse-flow-pressure/bounds', {
    isWithinFoodCode: judgeRinsePressure(pressurePa, 'food-code').pass,
    isWithinOlder: judgeRinsePressure(pressurePa, 'older').pass,
  });

const HOW: Derivation = {
  formula: '5 psi ≤ p ≤ 30 psi; older rules 15 psi ≤ p ≤ 25 psi',
  inputs: [FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE].flatMap(({ title, min, max }) => [
    { name: `${title}, least`, value: min ?? 0, unit: 'Pa' as const },
    { name: `${title}, most`, value: max ?? 0, unit: 'Pa' as const },
  ]),
  source: [...FOOD_CODE_RINSE_PRESSURE.source, ...OLDER_RINSE_PRESSURE.source],
};
