import type { Machine } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/drain-capacity';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { floorSink, hookedPlan, hookUp } from '../../../support/hookUpPlans';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

const subjects = ['machine'];
const receptor = ['machine', 'floor-drain'];
const drainOf = (inches: number, inchesPerFoot: number): Partial<Machine['hookUp']> => ({
  waste: 'direct',
  drainMaterial: 'old',
  drainBore: inches * 25.4,
  drainSlope: inchesPerFoot / 12,
});
const overSink = (inches: number, inchesPerFoot: number) =>
  hookedPlan({ drainMaterial: 'old' }, (plan) => floorSink(plan, { bore: inches * 25.4, slope: inchesPerFoot / 12 }));
/** Half full as Manning has it at n 0.015 where no other is said (computed, to three digits); full is 2.00 times as much (NSPC 2009, Appendix K, read). */
const flows = (gpm: number) =>
  [
    { part: 'half-full', times: 1 },
    { part: 'full', times: 2 },
  ].map(({ part, times }) => ({ part, subjects, value: toSI(gpm * times, 'gpm'), within: toSI(0.06 * times, 'gpm'), notes: /0\.015/ }));

const made = (gpm: number, notes: RegExp) => flows(gpm).map((flow) => ({ ...flow, notes }));

describeFigure(rule, [
  { name: '1½ in at ¼ in/ft: 3.91 gpm half full', plan: hookedPlan(drainOf(1.5, 0.25)), expect: flows(3.91) },
  { name: '2 in at ¼ in/ft: 8.41', plan: hookedPlan(drainOf(2, 0.25)), expect: flows(8.41) },
  { name: '2 in at ⅛ in/ft: 5.95', plan: hookedPlan(drainOf(2, 0.125)), expect: flows(5.95) },
  { name: '3 in at ⅛ in/ft: 17.5', plan: hookedPlan(drainOf(3, 0.125)), expect: flows(17.5) },
  { name: '4 in at ¼ in/ft: 53.4', plan: hookedPlan(drainOf(4, 0.25)), expect: flows(53.4) },
  {
    name: '2 in at ¼ in/ft of cast iron, n 0.013: 9.71',
    plan: hookedPlan({ ...drainOf(2, 0.25), drainMaterial: 'cast-iron' }),
    expect: made(9.71, /cast iron, 0\.013/),
  },
  {
    name: '2 in at ¼ in/ft of plastic, n 0.009: 14.0',
    plan: hookedPlan({ ...drainOf(2, 0.25), drainMaterial: 'plastic' }),
    expect: made(14, /plastic, 0\.009/),
  },
  {
    name: 'what it is made of is not known: as old pipe, and it says so',
    plan: hookedPlan({ ...drainOf(2, 0.25), drainMaterial: null }),
    expect: made(8.41, /not said: as old pipe/),
  },
  {
    name: 'over an air gap the pipe of the floor sink: 3 in at ¼ in/ft, 24.8',
    plan: overSink(3, 0.25),
    expect: flows(24.8).map((flow) => ({ ...flow, subjects: receptor, notes: /^Over an air gap/ })),
  },
  {
    name: 'the pipe of the floor sink is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ subjects: receptor, value: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'nor its fall',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: null })),
    expect: [{ subjects: receptor, value: null, asks: 'room.floorDrains.0.waste.slope' }],
  },
  {
    name: 'a sheet without a drain: the floor drain nearest to the machine',
    plan: linePlan({ family: ownDataSheet({ connections: [] }) }, (plan) => {
      hookUp(plan, { drainMaterial: 'old' });
      floorSink(plan, { bore: 76.2 });
    }),
    expect: flows(24.8).map((flow) => ({ ...flow, subjects: receptor })),
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ subjects, value: null, asks: 'room.floorDrains' }],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.waste' }],
  },
  {
    name: 'the drain is not known',
    plan: hookedPlan({ waste: 'direct', drainBore: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'its fall is not known',
    plan: hookedPlan({ waste: 'direct', drainSlope: null }),
    expect: [{ subjects, value: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  {
    name: 'it is level',
    plan: hookedPlan({ waste: 'direct', drainSlope: 0 }),
    expect: ['half-full', 'full'].map((part) => ({ part, subjects, value: null, refuses: 'slope is 0' })),
  },
]);
