import { machineHeats } from '../support/machineHeats';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'machine-heat-gain',
  title: 'Heat of the machine to the room',
  group: 'air',
  unit: 'W',
  derive: machineHeats,
};
