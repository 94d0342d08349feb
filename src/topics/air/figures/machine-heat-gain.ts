import type { FigureRule } from '../../../rules';
import { machineHeats } from './support/machineHeats';

export const rule: FigureRule = {
  id: 'machine-heat-gain',
  order: 610,
  title: 'Heat of the machine to the room',
  group: 'air',
  unit: 'W',
  derive: machineHeats,
};
