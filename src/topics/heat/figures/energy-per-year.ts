import { type FigureReading, type FigureRule, readOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { waterPerYearFigure as waterPerYear } from '../../water';
import { deriveBuildingYear, deriveMachineYear, isFedHot } from './support/yearEnergy';

export const rule: FigureRule = {
  id: 'energy-per-year',
  order: 410,
  title: 'Energy in a year',
  group: 'heat',
  unit: 'J',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** What the machine takes, and what the building's heater takes for it. */
const deriveMachine = (scene: Scene, placed: PlacedMachine): FigureReading[] => [
  { part: 'machine', ...deriveMachineYear(scene, placed) },
  ...(isFedHot(placed)
    ? [{ part: 'water-heater', ...deriveBuildingYear(scene, placed, readOf(waterPerYear, scene, placed.machine.id)) }]
    : []),
];
