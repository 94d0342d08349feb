import fc from 'fast-check';
import { produce } from 'immer';
import { it } from 'vitest';
import { rule } from '../../../../src/topics/drain/figures/dump-storage';
import { toSI } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { floorSink, hookedPlan, hookUp } from '../../../support/hookUpPlans';
import { linePlan, ownDataSheet } from '../../../support/linePlan';

const subjects = ['machine', 'floor-drain'];
const litres = (count: number) => count / 1000;

/** 12 gal of a tank at so many gallons a minute into 2 in at ¼ in/ft, which carries 19.4 gpm full at n 0.013, cast iron (computed). */
const dump = (gpm: number, inches = 2) =>
  linePlan({ family: ownDataSheet({ tank: { volume: toSI(12, 'gal'), heater: 3000 }, drainFlow: toSI(gpm, 'gpm') }) }, (plan) =>
    floorSink(plan, { bore: inches * 25.4 }),
  );

describeFigure(rule, [
  {
    name: '30 gpm into 19.4: 12 gal less 65 % of them',
    plan: dump(30),
    expect: [{ subjects, value: toSI(12 * (1 - 19.42 / 30), 'gal'), within: toSI(0.02, 'gal'), notes: /whole tank.*runs full.*cast iron/ }],
  },
  { name: '15 gpm: the pipe keeps up', plan: dump(15), expect: [{ subjects, value: 0 }] },
  { name: '30 gpm into 3 in, 57.2 gpm: it keeps up', plan: dump(30, 3), expect: [{ subjects, value: 0 }] },
  {
    name: 'no tank: the water of a rack, 2.8 L at 15 gpm into 1½ in, 9.02 gpm',
    plan: linePlan({ family: ownDataSheet({ tank: null, drainFlow: toSI(15, 'gpm') }) }, (plan) => floorSink(plan, { bore: 38.1 })),
    expect: [{ subjects, value: litres(2.8 * (1 - 9.02 / 15)), within: litres(0.01), notes: /No tank/ }],
  },
  {
    name: 'the same of old pipe, 16.8 gpm',
    plan: produce(dump(30), (plan) => hookUp(plan, { drainMaterial: 'old' })),
    expect: [{ subjects, value: toSI(12 * (1 - 16.82 / 30), 'gal'), within: toSI(0.02, 'gal'), notes: /old pipe/ }],
  },
  { name: 'connected directly', plan: hookedPlan({ waste: 'direct' }), expect: [] },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ subjects: ['machine'], value: null, asks: 'room.floorDrains' }],
  },
  {
    name: 'its pipe is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ subjects, value: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'nor its fall',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: null })),
    expect: [{ subjects, value: null, asks: 'room.floorDrains.0.waste.slope' }],
  },
  {
    name: 'the machine’s flow is not known',
    plan: linePlan({ family: ownDataSheet({ drainFlow: null }) }),
    expect: [{ subjects: ['machine'], value: null, asks: 'sheets.0.drainFlow' }],
  },
  {
    name: 'its pipe is level',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: 0 })),
    expect: [{ subjects, value: null, refuses: 'slope is 0' }],
  },
]);

const storageOf = (bore: number, slope: number) =>
  figuresOf(
    rule,
    linePlan({}, (plan) => {
      hookUp(plan, { waste: 'indirect' });
      floorSink(plan, { bore, slope });
    }),
  )[0]?.value ?? Number.NaN;

it('a wider or steeper pipe never needs more storage', () => {
  const bore = fc.double({ min: 32, max: 200, noNaN: true });
  const slope = fc.double({ min: 0.004, max: 0.1, noNaN: true });
  fc.assert(
    fc.property(bore, bore, slope, slope, (a, b, c, d) => {
      const wide = storageOf(Math.max(a, b), Math.max(c, d));
      const narrow = storageOf(Math.min(a, b), Math.min(c, d));
      return wide <= narrow + 1e-12;
    }),
    { seed: 709, numRuns: 40 },
  );
});
