import { askFor, createMessages, type Derivation, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
import { SUPPLY_HARDNESS } from '../formulas/hardness';

export const rule: FigureRule = {
  id: 'water-hardness',
  order: 270,
  title: 'Hardness of the water',
  group: 'water',
  unit: 'kg/m3',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveReading(scene)]),
};

/** What the input is called, and what was tested. */
export interface HardnessOfWaterMessages {
  'water-hardness/ask': NoParams;
  'water-hardness/as-tested': NoParams;
}

const message = createMessages<HardnessOfWaterMessages>();

/** How hard the water is. */
export const HARDNESS_INPUT = message('water-hardness/ask');

/** As it was tested, beside the bounds; nothing is computed. */
function deriveReading({ plan }: Scene): FigureReading {
  const { hardness } = plan.pipes;
  if (hardness === null) return askFor([], HARDNESS_INPUT, ['pipes', 'hardness']);
  return { subjects: [], value: hardness, how: HOW, notes: [message('water-hardness/as-tested')] };
}

const HOW: Derivation = {
  formula: '2 grains a gallon ≤ hardness ≤ 6 grains a gallon',
  inputs: [
    { name: `${SUPPLY_HARDNESS.title}, least`, value: SUPPLY_HARDNESS.min ?? 0, unit: 'kg/m3' },
    { name: `${SUPPLY_HARDNESS.title}, most`, value: SUPPLY_HARDNESS.max ?? 0, unit: 'kg/m3' },
  ],
  source: [...SUPPLY_HARDNESS.source],
};
