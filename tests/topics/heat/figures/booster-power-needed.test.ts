import type { Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/booster-power-needed';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { linePlan, recoverySheet } from '../../../support/linePlan';

const subjects = ['machine'];
const temperatures = { washC: toSI(150, 'F'), rinseC: toSI(180, 'F'), supplyC: toSI(110, 'F') };

/** 60 racks an hour that take so many gallons in it. */
const boosterPlan = (gph: number, supplyF: number): Plan =>
  sheetPlan(
    { cycle: cycleOf(55, 5), rinseWaterL: fromSI(toSI(gph / 60, 'gal'), 'L'), temperatures },
    ({ supply }) => void (supply.hotWaterC = toSI(supplyF, 'F')),
  );

/** San Joaquin County CA, form EHD 16-01: kW = gph · rise · 8.33 / (0.98 · 3412); its products are worked out. */
describeFigure(rule, [
  { name: '64 gph from 140 °F', plan: boosterPlan(64, 140), expect: [{ subjects, value: 6380, within: 5, notes: 'on top' }] },
  { name: '64 gph from 110 °F', plan: boosterPlan(64, 110), expect: [{ subjects, value: 11_160, within: 5 }] },
  { name: '28 gph from 110 °F', plan: boosterPlan(28, 110), expect: [{ subjects, value: 4880, within: 5 }] },
  { name: 'a supply as hot as the rinse', plan: boosterPlan(64, 185), expect: [{ subjects, value: 0 }] },
  {
    name: 'hot water is not known',
    plan: linePlan({}, ({ supply }) => void (supply.hotWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.hotWaterC' }],
  },
  {
    name: 'a cold-fed machine asks for the cold water',
    plan: linePlan({ family: 'heat-recovery' }, ({ supply }) => void (supply.coldWaterC = null)),
    expect: [{ subjects, value: null, asks: 'supply.coldWaterC' }],
  },
  {
    // 2.7 L in 92 s, from 12 °C to 82.22 °C: 27.910 gph · 126.4 °F · 8.33 / (0.98 · 3412).
    name: 'a cold-fed machine, where its sheet does not state what the vapour gives back',
    plan: linePlan({ family: recoverySheet(null) }),
    expect: [{ subjects, value: 8788, within: 2, notes: 'not counted' }],
  },
  {
    // 0.55 of it.
    name: 'a cold-fed machine that wins back 45 %',
    plan: linePlan({ family: 'heat-recovery' }),
    expect: [{ subjects, value: 4833.4, within: 1.5, notes: 'won back as the data sheet states it' }],
  },
  { name: 'chemicals need no booster', plan: linePlan({ family: 'chemical-sanitising' }), expect: [] },
  { name: 'no rated rate', plan: sheetPlan({ cycle: NO_CYCLE }), expect: [{ subjects, value: null, refuses: '10 s' }] },
  {
    name: 'a rinse too cool to sanitise',
    plan: sheetPlan({ temperatures: { ...temperatures, rinseC: 30 } }),
    expect: [{ subjects, value: null, refuses: 'rinseC is 30' }],
  },
]);
