import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/rinse-flow-pressure';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const pressurePlan = (psi: number, family = 'recirculating-hot-water'): Plan =>
  linePlan({ family }, ({ supply }) => void (supply.flowPressureKpa = fromSI(toSI(psi, 'psi'), 'kPa')));
const is = (psi: number, notes: string) => [{ subjects: ['machine'], value: toSI(psi, 'psi'), notes }];

/** FDA Food Code 4-501.113 as WAC 246-215-04560: 5 to 30 psi; older rules 15 to 25 psi. A bound itself holds. */
describeFigure(rule, [
  { name: '20 psi', plan: pressurePlan(20), expect: is(20, 'Within 5 to 30 psi of the food code, within 15 to 25 psi') },
  { name: '5 psi', plan: pressurePlan(5), expect: is(5, 'Within 5 to 30 psi of the food code, outside 15 to 25 psi') },
  { name: '30 psi', plan: pressurePlan(30), expect: is(30, 'Within 5 to 30 psi of the food code, outside 15 to 25 psi') },
  { name: '4 psi', plan: pressurePlan(4), expect: is(4, 'Outside 5 to 30 psi of the food code, outside 15 to 25 psi') },
  { name: '31 psi', plan: pressurePlan(31), expect: is(31, 'Outside 5 to 30 psi of the food code, outside 15 to 25 psi') },
  { name: 'chemical', plan: pressurePlan(31, 'chemical-sanitising'), expect: is(31, 'bounds hot-water rinses alone') },
  {
    name: 'not measured',
    plan: linePlan({}, ({ supply }) => void (supply.flowPressureKpa = null)),
    expect: [{ subjects: ['machine'], value: null, asks: 'supply.flowPressureKpa' }],
  },
]);
