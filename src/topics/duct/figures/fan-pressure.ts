import { explain, type FigureRule } from '../../../rules';
import { systemPressureRecord } from '../formulas/systemCurve';
import { type FanAnswer, fanReadings } from './support/fanReadings';

export const rule: FigureRule = {
  id: 'fan-pressure',
  order: 570,
  title: 'Pressure where the fan meets the run',
  group: 'air',
  unit: 'Pa',
  derive: (scene) => fanReadings(scene, answer),
};

const answer: FanAnswer = ({ systemK }, point) => ({
  value: point.pressurePa,
  how: explain(systemPressureRecord, { systemK, airflowM3s: point.airflowM3s }),
});
