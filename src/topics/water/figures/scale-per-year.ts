import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, readOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { hardnessMass, hardnessMassRecord } from '../formulas/hardness';
import { HARDNESS_INPUT } from './water-hardness';
import { rule as waterPerYear } from './water-per-year';

export const rule: FigureRule = {
  id: 'scale-per-year',
  order: 280,
  title: 'Hardness that the water brings in a year',
  group: 'water',
  unit: 'kg',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What it means for the machine. */
export interface ScalePerYearMessages {
  'scale-per-year/delime': NoParams;
}

const message = createMessages<ScalePerYearMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const { hardness } = scene.plan.pipes;
  if (hardness === null) return askFor(subjects, HARDNESS_INPUT, ['pipes', 'hardness']);
  const water = readOf(waterPerYear, scene, placed.machine.id);
  if (water.value === null) return water;
  const inputs = { hardnessKgM3: hardness, waterM3: water.value };
  return { subjects, ...compute(hardnessMassRecord, hardnessMass, inputs), notes: [message('scale-per-year/delime')] };
}
