import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/tank-heat-up';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const temperatures = { washC: toSI(120, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(60, 'F') };
const tankPlan = (gallons: number, heater: number, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ temperatures, tank: { volume: toSI(gallons, 'gal'), heater } }, (plan) => {
    plan.supply.hotWaterC = toSI(60, 'F');
    change(plan);
  });

/** San Joaquin County CA, form EHD 16-01, a filing: 93 gph by 60 °F take 13.9 kW, so 93 gal take an hour (read). */
describeFigure(rule, [
  { name: '93 gal', plan: tankPlan(93, 13_900), expect: [{ subjects, value: 3600, within: 13, notes: 'own heater' }] },
  { name: 'half of it', plan: tankPlan(46.5, 13_900), expect: [{ subjects, value: 1800, within: 7 }] },
  {
    name: 'as hot as the wash when it comes in',
    plan: tankPlan(10, 3000, ({ supply }) => void (supply.hotWaterC = toSI(140, 'F'))),
    expect: [{ subjects, value: 0 }],
  },
  {
    name: 'the water is not known',
    plan: tankPlan(10, 3000, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.hotWaterC' }],
  },
  { name: 'a heater of 100 W', plan: tankPlan(10, 100), expect: [{ subjects, value: null, refuses: 'powerW is 100' }] },
  { name: 'no tank', plan: linePlan({ family: 'fresh-water-hot-water' }), expect: [] },
]);
