import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { findEfficiencyCriterion } from '../formulas/support/efficiencyCriteria';
import { rinseOf } from './support/rinseWater';

export const rule: FigureRule = {
  id: 'rinse-water-per-rack',
  order: 110,
  title: 'Rinse water of a rack',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.flatMap(deriveReadings),
};

/** `data-sheet`: what the machine takes. `criterion`: what a published criterion allows a door machine; a comparison, not a limit. */
function deriveReadings(placed: PlacedMachine): FigureReading[] {
  const subjects = [placed.machine.id];
  const sheet = compute(rackWaterRecord, rackWater, rinseOf(placed, 1));
  const criterion = findEfficiencyCriterion({ machine: 'door', sanitizing: placed.sheet.sanitizing });
  const own: FigureReading = { part: 'data-sheet', subjects, ...sheet, note: 'As the data sheet states it.' };
  if (criterion === null) return [own];
  const how = { formula: 'water a rack, at most', inputs: [], source: [criterion.source] };
  const note = `Version ${criterion.version} of ENERGY STAR, in force from ${criterion.from}, for comparison: no rule of the room.`;
  return [own, { part: 'criterion', subjects, value: criterion.perRackM3, how, note }];
}
