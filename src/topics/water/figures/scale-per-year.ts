import { askFor, compute, type FigureReading, type FigureRule, readOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { hardnessMass, hardnessMassRecord } from '../formulas/hardness';
import { rule as waterPerYear } from './water-per-year';

export const rule: FigureRule = {
  id: 'scale-per-year',
  order: 280,
  title: 'Hardness that the water brings in a year',
  group: 'water',
  unit: 'kg',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const { hardness } = scene.plan.pipes;
  if (hardness === null) return askFor(subjects, 'hardness of the water', ['pipes', 'hardness']);
  const water = readOf(waterPerYear, scene, placed.machine.id);
  if (water.value === null) return water;
  const inputs = { hardnessKgM3: hardness, waterM3: water.value };
  return { subjects, ...compute(hardnessMassRecord, hardnessMass, inputs), note: DELIME };
}

const DELIME =
  'What part of it stays as scale is not known; the more it is, the more often the machine needs deliming, as its manual says. Delimer is an acid: gloves and goggles, and never with chlorine.';
