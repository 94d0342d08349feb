import type { DataSheet } from '../../../../src/catalog';
import { check } from '../../../../src/topics/heat/checks/booster-enough';
import { fromSI, toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
/** 60 racks an hour that take 64 gal, from 110 °F to 180 °F: 11.16 kW by the county form. */
const boosterPlan = (booster: number | null, sheet: Partial<DataSheet> = {}) =>
  sheetPlan(
    {
      cycle: cycleOf(55, 5),
      rinseWaterL: fromSI(toSI(64 / 60, 'gal'), 'L'),
      temperatures: { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(110, 'F') },
      booster,
      ...sheet,
    },
    ({ supply }) => void (supply.hotWaterC = toSI(110, 'F')),
  );
const found = (verdict: 'clear' | 'watch', limit: number) => ({ verdict, subjects, measured: 11_160, within: 5, limit });

describeCheck(check, [
  { name: '11.2 kW', plan: boosterPlan(11_200), expect: [found('clear', 11_200)] },
  {
    name: '9 kW',
    plan: boosterPlan(9000),
    expect: [
      {
        ...found('watch', 9000),
        says: 'To keep the machine at its rated rate the booster needs 11.16 kW and has 9 kW: the rinse waits in each cycle and fewer racks are done. Feed it hotter water, or take a larger booster.',
      },
    ],
  },
  {
    name: 'the booster is not known',
    plan: boosterPlan(null),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'sheets.0.booster' }],
  },
  {
    name: 'the water is not known',
    plan: linePlan({}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'supply.hotWaterC' }],
  },
  { name: 'no rated rate', plan: boosterPlan(9000, { cycle: NO_CYCLE }), expect: [{ verdict: 'ask', subjects, measured: null }] },
  { name: 'chemicals', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
]);
