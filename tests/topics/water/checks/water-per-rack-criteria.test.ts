import { check } from '../../../../src/topics/water/checks/water-per-rack-criteria';
import { fromSI, toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { sheetPlan } from '../../../support/figurePlans';

const gal = (value: number) => toSI(value, 'gal');
const takes = (gallons: number, sanitizing: 'hot-water' | 'chemical' = 'hot-water') =>
  sheetPlan({ rinseWaterL: fromSI(gal(gallons), 'L'), sanitizing });
const found = (verdict: 'clear' | 'watch', value: number, limit: number) => ({
  verdict,
  subjects: ['machine'],
  measured: gal(value),
  limit: gal(limit),
});

/** ENERGY STAR 3.0, door machines: 0.89 gal with hot water (restated), 1.18 with chemicals (memory). Never more than a watch. */
describeCheck(check, [
  { name: '0.89 gal', plan: takes(0.89), expect: [found('clear', 0.89, 0.89)] },
  {
    name: '0.95 gal',
    plan: takes(0.95),
    expect: [
      {
        ...found('watch', 0.95, 0.89),
        says: 'Each rack takes 0.95 gal, more than the 0.89 gal of the published criteria: another machine would cost less to run.',
      },
    ],
  },
  { name: '1.18 gal with chemicals', plan: takes(1.18, 'chemical'), expect: [found('clear', 1.18, 1.18)] },
  { name: '1.5 gal with chemicals', plan: takes(1.5, 'chemical'), expect: [found('watch', 1.5, 1.18)] },
]);
