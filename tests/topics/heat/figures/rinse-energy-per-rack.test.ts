import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/rinse-energy-per-rack';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const coldPlan = (coldWaterC: number | null): Plan =>
  sheetPlan(
    {
      rinseWaterL: fromSI(toSI(0.89, 'gal'), 'L'),
      temperatures: { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(140, 'F') },
    },
    ({ supply }) => void (supply.coldWaterC = coldWaterC),
  );

/** 8.33 / (0.98 · 3412) kWh a gallon and °F: San Joaquin County CA, form EHD 16-01; the products are worked out by hand. */
describeFigure(rule, [
  {
    name: '0.89 gal by 110 °F: 0.24389 kWh',
    plan: coldPlan(toSI(70, 'F')),
    expect: [{ subjects, value: toSI(0.24389, 'kWh'), within: toSI(1e-5, 'kWh'), notes: 'by electricity' }],
  },
  { name: 'a supply hotter than the rinse', plan: coldPlan(90), expect: [{ subjects, value: 0 }] },
  { name: 'cold water is not known', plan: coldPlan(null), expect: [{ subjects, value: null, asks: 'supply.coldWaterC' }] },
  {
    name: 'by 100 K, the most that water can',
    plan: sheetPlan({ temperatures: { washC: 0, rinseC: 100, supplyC: 0 } }, ({ supply }) => void (supply.coldWaterC = 0)),
    expect: [{ subjects, value: (0.0028 * 100 * 4.17895e6) / 0.98, within: 300 }],
  },
  {
    name: 'what the vapour gives is not counted',
    plan: linePlan({ family: 'heat-recovery' }),
    expect: [{ subjects, value: (0.0027 * 70.22 * 4.17895e6) / 0.98, within: 100, notes: 'wins back is not taken off' }],
  },
  { name: 'chemicals need no hot rinse', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
]);
