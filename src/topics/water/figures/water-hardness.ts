import { askFor, type FigureReading, type FigureRule, type How } from '../../../rules';
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

/** As it was tested, beside the bounds; nothing is computed. */
function deriveReading({ plan }: Scene): FigureReading {
  const { hardness } = plan.pipes;
  if (hardness === null) return askFor([], 'hardness of the water', ['pipes', 'hardness']);
  return { subjects: [], value: hardness, how: HOW, note: NOTE };
}

const NOTE =
  'As calcium carbonate, as tested at the machine: after the softener where there is one. The machine’s own sheet may be stricter.';

const HOW: How = {
  formula: '2 grains a gallon ≤ hardness ≤ 6 grains a gallon',
  inputs: [
    { name: `${SUPPLY_HARDNESS.title}, least`, value: SUPPLY_HARDNESS.min ?? 0, unit: 'kg/m3' },
    { name: `${SUPPLY_HARDNESS.title}, most`, value: SUPPLY_HARDNESS.max ?? 0, unit: 'kg/m3' },
  ],
  source: [...SUPPLY_HARDNESS.source],
};
