import { explain, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { operatingPointRecord } from '../formulas/operatingPoint';
import { type FanAnswer, fanReadings } from './support/fanReadings';

export const rule: FigureRule = {
  id: 'fan-airflow',
  order: 560,
  title: 'Airflow where the fan meets the run',
  group: 'air',
  unit: 'm3/s',
  derive: (scene: Scene): FigureReading[] => fanReadings(scene, answer),
};

const answer: FanAnswer = ({ curve, systemK }, point) => ({
  value: point.airflowM3s,
  how: explain(operatingPointRecord, {
    airflowsM3s: curve.map(({ airflowM3s }) => airflowM3s),
    pressuresPa: curve.map(({ pressurePa }) => pressurePa),
    systemK,
  }),
});
