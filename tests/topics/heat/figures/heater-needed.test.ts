import { describe, expect, it } from 'vitest';
import { createPlan, type Plan } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/heater-needed';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';
import { flowOf } from '../../../support/waterPlans';

/** m³: a tank that gives nothing, which is not the same as none. */
const NEXT_TO_NOTHING = 1e-9;

/** A machine of 60 racks an hour that takes so much of the demand; the spray of the line takes 45 gph. */
const demandPlan = (gph: number, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan({ cycle: cycleOf(55, 5), rinseWaterL: fromSI(toSI((gph - 45) / 60, 'gal'), 'L') }, (plan) => {
    Object.assign(plan.supply, { coldWaterC: toSI(60, 'F'), hotWaterC: toSI(120, 'F') });
    plan.things = [];
    Object.assign(plan.pipes, { storage: NEXT_TO_NOTHING });
    Object.assign(plan.tariff, { waterHeatedBy: 'electricity' });
    change(plan);
  });

/** No store, a machine whose rinse takes 4 gpm, and the sink of the spray. */
const instantPlan = (hotF: number, change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan(flowOf(4), (plan) => {
    Object.assign(plan.supply, { coldWaterC: toSI(60, 'F'), hotWaterC: toSI(hotF, 'F') });
    plan.things = [];
    Object.assign(plan.pipes, { storage: 0 });
    Object.assign(plan.tariff, { waterHeatedBy: 'electricity' });
    change(plan);
  });

const watts = (gph: number, riseF: number) => (1000 * gph * riseF * 8.33) / (0.98 * 3412);

const asks = (path: string) => [{ subjects: [], value: null, asks: path }];

describeFigure(rule, [
  {
    // San Joaquin County CA, form EHD 16-01, a filing: 93 gph, 60 °F, electric, 13.9 kW (read).
    name: '93 gph by 60 °F, electric',
    plan: demandPlan(93),
    expect: [{ subjects: [], value: 13_900, within: 50, notes: 'this room alone' }],
  },
  {
    // Monterey County CA, form PC-HWH: 952.0 Btu/h a gph at 80 °F.
    name: '100 gph by 80 °F, gas',
    plan: demandPlan(100, ({ supply, tariff }) => {
      supply.hotWaterC = toSI(140, 'F');
      tariff.waterHeatedBy = 'gas';
    }),
    expect: [{ subjects: [], value: toSI(95_200, 'Btu/h'), within: 1, notes: 'stricter of two county forms' }],
  },
  {
    // The same form: 0.7 of 100 gal over 2 h leaves 65 of 100 gph.
    name: '100 gph and 100 gal in store: 65 gph',
    plan: demandPlan(100, ({ pipes, tariff }) => {
      pipes.storage = toSI(100, 'gal');
      tariff.waterHeatedBy = 'gas';
    }),
    expect: [{ subjects: [], value: toSI(65 * 714, 'Btu/h'), within: 1 }],
  },
  {
    // 2 gpm to each sink at once, 120 °F at least; San Joaquin: 8.33 / (0.98 · 3412) kW a gph and °F.
    name: 'nothing in store: the spray’s sink, and a rinse of 4 gpm',
    plan: instantPlan(120),
    expect: [{ subjects: [], value: watts(6 * 60, 60), within: 1, notes: '2 gpm for each sink' }],
  },
  {
    name: 'nothing in store, a hand sink besides',
    plan: instantPlan(120, (plan) => void plan.things.push(...linePlan().things.filter(({ kind }) => kind === 'hand-sink'))),
    expect: [{ subjects: [], value: watts(8 * 60, 60), within: 1 }],
  },
  {
    name: 'nothing in store, a machine fed cold',
    plan: instantPlan(120, ({ machines }) => {
      for (const { hookUp } of machines) hookUp.water = 'cold';
    }),
    expect: [{ subjects: [], value: watts(2 * 60, 60), within: 1 }],
  },
  {
    name: 'nothing in store, water of 110 °F: reckoned at 120 °F',
    plan: instantPlan(110),
    expect: [{ subjects: [], value: watts(6 * 60, 60), within: 1 }],
  },
  { name: 'nothing in store, water of 140 °F', plan: instantPlan(140), expect: [{ subjects: [], value: watts(6 * 60, 80), within: 1 }] },
  {
    name: 'nothing in store, a rinse of no time',
    plan: demandPlan(93, ({ pipes }) => void (pipes.storage = 0)),
    expect: [{ subjects: [], value: null, refuses: 'rinseS' }],
  },
  { name: 'all of it in store', plan: demandPlan(100, ({ pipes }) => void (pipes.storage = 2)), expect: [{ subjects: [], value: 0 }] },
  {
    name: 'hot water is not known',
    plan: demandPlan(93, ({ supply }) => void (supply.hotWaterC = null)),
    expect: asks('supply.hotWaterC'),
  },
  {
    name: 'cold water is not known',
    plan: demandPlan(93, ({ supply }) => void (supply.coldWaterC = null)),
    expect: asks('supply.coldWaterC'),
  },
  { name: 'the store is not known', plan: demandPlan(93, ({ pipes }) => void (pipes.storage = null)), expect: asks('pipes.storage') },
  {
    name: 'how it is heated is not known',
    plan: demandPlan(93, ({ tariff }) => void (tariff.waterHeatedBy = null)),
    expect: asks('tariff.waterHeatedBy'),
  },
  { name: 'no rated rate', plan: sheetPlan({ cycle: NO_CYCLE }), expect: [{ subjects: [], value: null, refuses: '10 s' }] },
  { name: 'no fixture', plan: createPlan(), expect: [] },
]);

describe('the heater', () => {
  const needed = (change: (plan: Plan) => void) => figuresOf(rule, demandPlan(100, change))[0]?.value ?? Number.NaN;
  it('is smaller with more in store, and larger with hotter water', () => {
    expect(needed(({ pipes }) => void (pipes.storage = 0.3))).toBeLessThan(needed(({ pipes }) => void (pipes.storage = 0.1)));
    expect(needed(({ supply }) => void (supply.hotWaterC = 60))).toBeGreaterThan(needed(({ supply }) => void (supply.hotWaterC = 50)));
  });
});
