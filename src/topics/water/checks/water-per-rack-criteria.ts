import {
  type Check,
  createMessages,
  holdReading,
  isOver,
  type Measurement,
  machinePlace,
  type NoParams,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as rinseWaterPerRackFigure } from '../figures/rinse-water-per-rack';
import { findEfficiencyCriterion } from '../formulas/support/efficiencyCriteria';

export const check: Check = {
  id: 'water-per-rack-criteria',
  order: 330,
  title: 'Water a rack beside the published criteria',
  group: 'water',
  unit: 'm3',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'ENERGY STAR commercial dishwashers 3.0',
    section: 'stationary single-tank door machines; 0.89 gal a rack with hot water is restated, 1.18 with chemicals from memory',
    confidence: 'memory',
  },
  why: 'A criterion, never a rule: what a machine takes for each rack is paid for every day, as water, as heat and as sewer. It tells whether a rebate may be had.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of the water of a rack, in m³. */
export interface WaterPerRackCriteriaMessages {
  'water-per-rack-criteria/what': NoParams;
  'water-per-rack-criteria/within': { perRack: number; most: number };
  'water-per-rack-criteria/more': { perRack: number; most: number };
}

const message = createMessages<WaterPerRackCriteriaMessages>();

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const criterion = findEfficiencyCriterion({ machine: 'door', sanitizing: placed.sheet.sanitizing });
  if (criterion === null) return [];
  const limit = criterion.perRackM3;
  return readingsFor(rinseWaterPerRackFigure, scene, placed)
    .filter(({ part }) => part === 'data-sheet')
    .map(({ part: _part, ...reading }) =>
      holdReading(reading, {
        place: machinePlace(placed),
        what: message('water-per-rack-criteria/what'),
        limit,
        severity: 'watch',
        message: (perRack) =>
          message(isOver(perRack, limit) ? 'water-per-rack-criteria/more' : 'water-per-rack-criteria/within', { perRack, most: limit }),
      }),
    );
}
