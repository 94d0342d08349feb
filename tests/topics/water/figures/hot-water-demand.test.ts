import { createPlan, type Plan, type ThingKind } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/hot-water-demand';
import { fromSI, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { cycleOf, NO_CYCLE, sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';

/** A thing in another part of the building, out of everything's way. */
const thing = (id: string, kind: ThingKind, width: number): Plan['things'][number] => ({
  id,
  kind,
  name: '',
  x: 30_000,
  y: 30_000,
  rotationDeg: 0,
  width,
  depth: 700,
  height: 900,
  ware: 'none',
  clearBelow: null,
  sealed: null,
  basins: null,
});
const sinks = [thing('sink', 'three-compartment-sink', 1500), thing('hand', 'hand-sink', 400)];

/** 60 racks an hour of 0.5 gal: 30 gph, beside the spray of the line. */
const machine = { cycle: cycleOf(55, 5), rinseWaterL: fromSI(toSI(0.5, 'gal'), 'L') };
const is = (gph: number) => [{ subjects: [], value: toSI(gph, 'gph'), notes: 'three meals a day' }];

/** California Conference of Directors of Environmental Health, demand table: spray 45, compartment 14 or 25, hand sink 5 gph. */
describeFigure(rule, [
  { name: 'machine, spray and hand sink: 30 + 45 + 5', plan: sheetPlan(machine), expect: is(80) },
  {
    name: 'with a small sink and a second hand sink: + 3 · 14 + 5',
    plan: sheetPlan(machine, ({ things }) => void things.push(...sinks)),
    expect: is(127),
  },
  {
    name: 'with a sink of 72 in: + 3 · 25',
    plan: sheetPlan(machine, ({ things }) => void things.push(thing('sink', 'three-compartment-sink', 1828.8))),
    expect: is(155),
  },
  {
    name: 'with a small sink whose two bowls are of 24 × 24 × 10 in: + 2 · 25',
    plan: sheetPlan(machine, ({ things }) => {
      const basins = {
        count: 2,
        length: 609.6,
        width: 609.6,
        depth: 254,
        leftBoard: null,
        rightBoard: null,
        waste: 'indirect',
        sanitizing: 'hot-water',
        heater: null,
      } as const;
      things.push({ ...thing('sink', 'three-compartment-sink', 1500), basins });
    }),
    expect: [{ subjects: [], value: toSI(130, 'gph'), within: toSI(0.01, 'gph') }],
  },
  {
    name: 'a cold-fed machine that is connected to hot water takes it: 2.7 L each 92 s',
    plan: linePlan({ family: 'heat-recovery' }, ({ machines: [placed] }) => {
      if (placed !== undefined) placed.hookUp.water = 'hot';
    }),
    expect: [{ subjects: [], value: toSI(50, 'gph') + 0.0027 / 92 }],
  },
  { name: 'a cold-fed machine takes no hot water', plan: linePlan({ family: 'heat-recovery' }), expect: is(50) },
  {
    name: 'a machine without a rated rate',
    plan: sheetPlan({ cycle: NO_CYCLE }),
    expect: [{ subjects: [], value: null, refuses: '10 s' }],
  },
  { name: 'no fixture', plan: createPlan(), expect: [] },
]);
