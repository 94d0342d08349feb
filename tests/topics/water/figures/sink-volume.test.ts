import type { Plan, Thing } from '../../../../src/plan';
import { rule } from '../../../../src/topics/water/figures/sink-volume';
import { MM_PER_INCH, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const subjects = ['sink'];
type Basins = NonNullable<Thing['basins']>;
const bowls = (side: number, change: Partial<Basins> = {}): Basins => ({
  count: 3,
  length: side * MM_PER_INCH,
  width: side * MM_PER_INCH,
  depth: 10 * MM_PER_INCH,
  leftBoard: null,
  rightBoard: null,
  waste: 'indirect',
  sanitizing: 'hot-water',
  heater: null,
  ...change,
});
const sinkPlan = (basins: Thing['basins']): Plan =>
  linePlan({}, (plan) => {
    plan.things = [];
    addThing(plan, 'sink', 30_000, 30_000, 1800, 700, { kind: 'three-compartment-sink', basins });
  });

/** California county directors, hot-water demand table: 14 and 25 gal (read). */
describeFigure(rule, [
  { name: '18 × 18 × 10 in', plan: sinkPlan(bowls(18)), expect: [{ subjects, value: toSI(14, 'gal'), within: toSI(0.5, 'gal') }] },
  { name: '24 × 24 × 10 in', plan: sinkPlan(bowls(24)), expect: [{ subjects, value: toSI(25, 'gal'), within: toSI(0.005, 'gal') }] },
  { name: 'its make is not known', plan: sinkPlan(null), expect: [{ subjects, value: null, asks: 'things.0.basins' }] },
  {
    name: 'its depth is not known',
    plan: sinkPlan(bowls(18, { depth: null })),
    expect: [{ subjects, value: null, asks: 'things.0.basins.depth' }],
  },
  { name: 'bowls of 20 mm', plan: sinkPlan(bowls(18, { length: 20 })), expect: [{ subjects, value: null, refuses: 'lengthM is 0.02' }] },
  { name: 'no sink', plan: linePlan({}, (plan) => void (plan.things = [])), expect: [] },
]);
