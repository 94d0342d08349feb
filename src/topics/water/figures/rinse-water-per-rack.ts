import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
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

/** Where each comes from. */
export interface RinseWaterPerRackMessages {
  'rinse-water-per-rack/data-sheet': NoParams;
  /** `from`: the day it came into force. */
  'rinse-water-per-rack/criterion': { version: string; from: string };
}

const message = createMessages<RinseWaterPerRackMessages>();

/** `data-sheet`: what the machine takes. `criterion`: what a published criterion allows a door machine; a comparison, not a limit. */
function deriveReadings(placed: PlacedMachine): FigureReading[] {
  const subjects = [placed.machine.id];
  const sheet = compute(rackWaterRecord, rackWater, rinseOf(placed, 1));
  const criterion = findEfficiencyCriterion({ machine: 'door', sanitizing: placed.sheet.sanitizing });
  const own: FigureReading = { part: 'data-sheet', subjects, ...sheet, notes: [message('rinse-water-per-rack/data-sheet')] };
  if (criterion === null) return [own];
  const how = { formula: 'water a rack, at most', inputs: [], source: [criterion.source] };
  const notes = [message('rinse-water-per-rack/criterion', { version: criterion.version, from: criterion.from })];
  return [own, { part: 'criterion', subjects, value: criterion.perRackM3, how, notes }];
}
