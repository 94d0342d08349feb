import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/heater-enough';
import { fromSI, toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { cycleOf, sheetPlan } from '../../../support/figurePlans';
import { flowOf } from '../../../support/waterPlans';

/** A spray of 45 gph and a machine of 48: 93 gph by 60 °F, electric, take 13.9 kW (a filing on form EHD 16-01). */
const heaterPlan = (heaterPower: number | null, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ cycle: cycleOf(55, 5), rinseWaterL: fromSI(toSI(48 / 60, 'gal'), 'L') }, (plan) => {
    plan.things = [];
    Object.assign(plan.supply, { coldWaterC: toSI(60, 'F'), hotWaterC: toSI(120, 'F') });
    Object.assign(plan.pipes, { storage: 1e-9, heaterPower });
    Object.assign(plan.tariff, { waterHeatedBy: 'electricity' });
    change(plan);
  });
/** No store, a rinse of 4 gpm, and no sink but that of the spray. */
const instantPlan = (heaterPower: number, hotF: number | null): Plan =>
  sheetPlan(flowOf(4), (plan) => {
    plan.things = [];
    Object.assign(plan.supply, { coldWaterC: toSI(60, 'F'), hotWaterC: hotF === null ? null : toSI(hotF, 'F') });
    Object.assign(plan.pipes, { storage: 0, heaterPower });
    Object.assign(plan.tariff, { waterHeatedBy: 'electricity' });
  });
const AT_ONCE = (1000 * 360 * 60 * 8.33) / (0.98 * 3412);

const found = (verdict: 'clear' | 'stop', limit: number) => ({ verdict, subjects: [], measured: 13_900, within: 50, limit });
const asks = (path: string) => [{ verdict: 'ask' as const, subjects: [], measured: null, asks: path }];

describeCheck(check, [
  { name: '14 kW', plan: heaterPlan(14_000), expect: [found('clear', 14_000)] },
  {
    name: '12 kW',
    plan: heaterPlan(12_000),
    expect: [
      {
        ...found('stop', 12_000),
        says: 'In the peak this room needs a water heater of 13.9 kW and has 12 kW: have a larger heater or more hot water in store.',
      },
    ],
  },
  {
    // 0.7 of 100 gal over 2 h: 35 gph less.
    name: '12 kW and 100 gal in store',
    plan: heaterPlan(12_000, ({ pipes }) => void (pipes.storage = toSI(100, 'gal'))),
    expect: [{ verdict: 'clear', subjects: [], measured: (13_900 * 58) / 93, within: 50, limit: 12_000 }],
  },
  {
    // 2 gpm to the sink of the spray, and a rinse of 4 gpm, by 60 °F.
    name: 'nothing in store, 60 kW',
    plan: instantPlan(60_000, 120),
    expect: [
      { verdict: 'clear', subjects: [], measured: AT_ONCE, within: 5, limit: 60_000 },
      { verdict: 'clear', part: 'temperature', subjects: [], measured: toSI(120, 'F'), limit: toSI(120, 'F') },
    ],
  },
  {
    name: 'nothing in store, 50 kW and 110 °F',
    plan: instantPlan(50_000, 110),
    expect: [
      {
        verdict: 'stop',
        subjects: [],
        measured: AT_ONCE,
        within: 5,
        limit: 50_000,
        says: 'With all its sinks open at once, and nothing in store, this room needs a water heater of 53.81 kW and has 50 kW: have a larger heater or hot water in store.',
      },
      {
        verdict: 'stop',
        part: 'temperature',
        subjects: [],
        measured: toSI(110, 'F'),
        limit: toSI(120, 'F'),
        says: 'The instantaneous heater gives 110 °F; 120 °F is needed at the sinks. Have licensed trades set it higher: water so hot scalds.',
      },
    ],
  },
  {
    name: 'nothing in store, how hot is not known: asked once',
    plan: instantPlan(50_000, null),
    expect: asks('supply.hotWaterC'),
  },
  { name: 'its power is not known', plan: heaterPlan(null), expect: asks('pipes.heaterPower') },
  { name: 'the store is not known', plan: heaterPlan(12_000, ({ pipes }) => void (pipes.storage = null)), expect: asks('pipes.storage') },
  {
    name: 'neither is known: one after the other',
    plan: heaterPlan(null, ({ pipes }) => void (pipes.storage = null)),
    expect: asks('pipes.storage'),
  },
  { name: 'no fixture', plan: createPlan(), expect: [] },
]);
