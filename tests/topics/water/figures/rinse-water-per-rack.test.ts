import { rule } from '../../../../src/topics/water/figures/rinse-water-per-rack';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';

const subjects = ['machine'];
const criterion = (gallons: number) => ({ part: 'criterion', subjects, value: toSI(gallons, 'gal'), notes: 'for comparison' });

/** ENERGY STAR 3.0, door machines: 0.89 gal with hot water (restated), 1.18 gal with chemicals (memory). */
describeFigure(rule, [
  {
    name: '0.75 gal on the data sheet',
    plan: sheetPlan({ rinseWaterL: fromSI(toSI(0.75, 'gal'), 'L') }),
    expect: [{ part: 'data-sheet', subjects, value: toSI(0.75, 'gal') }, criterion(0.89)],
  },
  {
    name: '4.4 L and chemicals',
    plan: sheetPlan({ rinseWaterL: 4.4, sanitizing: 'chemical' }),
    expect: [{ part: 'data-sheet', subjects, value: 0.0044 }, criterion(1.18)],
  },
]);
