import { askFor, type FigureReading, type FigureRule, type How } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { FOOD_CODE_RINSE_PRESSURE, judgeRinsePressure, OLDER_RINSE_PRESSURE, type RinsePressureRule } from '../formulas/rinsePressure';

export const rule: FigureRule = {
  id: 'rinse-flow-pressure',
  order: 210,
  title: 'Flow pressure of the rinse',
  group: 'water',
  unit: 'Pa',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What was measured at the stub, beside the bounds; nothing is computed. */
function deriveReading({ plan }: Scene, { machine, sheet }: PlacedMachine): FigureReading {
  const subjects = [machine.id];
  const kPa = plan.supply.flowPressureKpa;
  if (kPa === null) return askFor(subjects, 'flow pressure at the stub', ['supply', 'flowPressureKpa']);
  const value = toSI(kPa, 'kPa');
  if (sheet.sanitizing === 'chemical') return { subjects, value, how: null, note: `${PLATE} The code bounds hot-water rinses alone.` };
  return { subjects, value, how: HOW, note: `${judgeWords(value)} ${PLATE}` };
}

const PLATE = 'Taken at the stub, not at the rinse valve; what the data plate states goes before it.';

const judgeWords = (pressurePa: number) =>
  `${within(pressurePa, 'food-code')} 5 to 30 psi of the food code, ${within(pressurePa, 'older').toLowerCase()} 15 to 25 psi of older rules.`;

const within = (pressurePa: number, by: RinsePressureRule) => (judgeRinsePressure(pressurePa, by).pass ? 'Within' : 'Outside');

const HOW: How = {
  formula: '5 psi ≤ p ≤ 30 psi; older rules 15 psi ≤ p ≤ 25 psi',
  inputs: [FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE].flatMap(({ title, min, max }) => [
    { name: `${title}, least`, value: min ?? 0, unit: 'Pa' as const },
    { name: `${title}, most`, value: max ?? 0, unit: 'Pa' as const },
  ]),
  source: [...FOOD_CODE_RINSE_PRESSURE.source, ...OLDER_RINSE_PRESSURE.source],
};
