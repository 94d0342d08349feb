import type { Plan, Thing } from '../../../../src/plan';
import { rule } from '../../../../src/topics/heat/figures/sanitizing-heater';
import { MM_PER_INCH, toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const subjects = ['sink'];
type Basins = NonNullable<Thing['basins']>;
/** Bowls of 24 × 24 × 10 in hold 25 gal. */
const BOWLS: Basins = {
  count: 3,
  length: 24 * MM_PER_INCH,
  width: 24 * MM_PER_INCH,
  depth: 10 * MM_PER_INCH,
  leftBoard: null,
  rightBoard: null,
  waste: 'indirect',
  sanitizing: 'hot-water',
  heater: null,
};
const sinkPlan = (change: Partial<Basins> | null, hotF: number | null = 120): Plan =>
  linePlan({}, (plan) => {
    plan.things = [];
    plan.supply.hotWaterC = hotF === null ? null : toSI(hotF, 'F');
    addThing(plan, 'sink', 2500, 2500, 1800, 700, {
      kind: 'three-compartment-sink',
      basins: change === null ? null : { ...BOWLS, ...change },
    });
  });

/** San Joaquin County CA, form EHD 16-01: gph · rise · 8.33 / (0.98 · 3412) kW; 171 °F by hand. */
describeFigure(rule, [
  {
    name: '25 gal from 120 °F',
    plan: sinkPlan({}),
    expect: [{ subjects, value: (25 * 51 * 8330) / (0.98 * 3412), within: 1, notes: /171 °F.*30 s.*burns/ }],
  },
  { name: '25 gal from 140 °F', plan: sinkPlan({}, 140), expect: [{ subjects, value: (25 * 31 * 8330) / (0.98 * 3412), within: 1 }] },
  { name: 'hot enough as it comes', plan: sinkPlan({}, 175), expect: [{ subjects, value: 0 }] },
  { name: 'by chemicals', plan: sinkPlan({ sanitizing: 'chemical' }), expect: [] },
  {
    name: 'how it sanitises is not known',
    plan: sinkPlan({ sanitizing: null }),
    expect: [{ subjects, value: null, asks: 'things.0.basins.sanitizing' }],
  },
  { name: 'its make is not known', plan: sinkPlan(null), expect: [{ subjects, value: null, asks: 'things.0.basins' }] },
  {
    name: 'its depth is not known',
    plan: sinkPlan({ depth: null }),
    expect: [{ subjects, value: null, asks: 'things.0.basins.depth' }],
  },
  { name: 'hot water is not known', plan: sinkPlan({}, null), expect: [{ subjects, value: null, asks: 'supply.hotWaterC' }] },
  { name: 'bowls of 20 mm', plan: sinkPlan({ length: 20 }), expect: [{ subjects, value: null, refuses: 'lengthM is 0.02' }] },
  { name: 'no sink', plan: linePlan({}, (plan) => void (plan.things = [])), expect: [] },
]);
