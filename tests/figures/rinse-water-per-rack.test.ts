import { rule } from '../../src/figures/rules/rinse-water-per-rack';
import { fromSI, toSI } from '../../src/units';
import { describeFigure } from '../support/figureCases';
import { sheetPlan } from '../support/figurePlans';

/** 0.89 gal a rack is the criterion of a public program for a door machine (W-EH6). */
describeFigure(rule, [
  {
    name: '0.89 gal on the data sheet',
    plan: sheetPlan({ rinseWaterL: fromSI(toSI(0.89, 'gal'), 'L') }),
    expect: [{ subjects: ['machine'], value: toSI(0.89, 'gal') }],
  },
  { name: '2.8 L on the data sheet', plan: sheetPlan({ rinseWaterL: 2.8 }), expect: [{ subjects: ['machine'], value: 0.0028 }] },
]);
