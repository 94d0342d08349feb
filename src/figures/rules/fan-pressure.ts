import { systemPressureRecord } from '../../engineering';
import { explain } from '../compute';
import { type FanAnswer, fanReadings } from '../support/fanReadings';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'fan-pressure',
  title: 'Pressure where the fan meets the run',
  group: 'air',
  unit: 'Pa',
  derive: (scene) => fanReadings(scene, answer),
};

const answer: FanAnswer = ({ systemK }, point) => ({
  value: point.pressurePa,
  how: explain(systemPressureRecord, { systemK, airflowM3s: point.airflowM3s }),
});
