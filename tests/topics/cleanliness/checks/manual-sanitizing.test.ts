import type { Plan, Thing } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/manual-sanitizing';
import { MM_PER_INCH, toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const subjects = ['sink'];
type Basins = NonNullable<Thing['basins']>;
const BOWLS: Basins = {
  count: 3,
  length: 24 * MM_PER_INCH,
  width: 24 * MM_PER_INCH,
  depth: 10 * MM_PER_INCH,
  leftBoard: 500,
  rightBoard: 500,
  waste: 'indirect',
  sanitizing: 'hot-water',
  heater: false,
};
const sinkPlan = (change: Partial<Basins> | null, hotC: number | null, units: 'us' | 'metric' = 'us'): Plan =>
  linePlan({}, (plan) => {
    plan.supply.hotWaterC = hotC;
    plan.settings.units = units;
    addThing(plan, 'sink', 2500, 2500, 2800, 700, {
      kind: 'three-compartment-sink',
      basins: change === null ? null : { ...BOWLS, ...change },
    });
  });
const f = (value: number) => toSI(value, 'F');
const LIMIT = f(171);

/** FDA Food Code 4-501.111: 171 °F (77 °C) (read); 30 s (read). */
describeCheck(check, [
  {
    name: '171 °F',
    plan: sinkPlan({}, f(171)),
    expect: [
      {
        verdict: 'clear',
        subjects,
        measured: f(171),
        limit: LIMIT,
        says: 'Hot water comes at 171 °F; ware in the last bowl of the three-compartment sink stays 30 s at 171 °F. Water so hot burns: mix it down at every other tap.',
      },
    ],
  },
  {
    name: '140 °F',
    plan: sinkPlan({}, f(140)),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: f(140),
        limit: LIMIT,
        says: 'Hot water comes at 140 °F; ware in the last bowl of the three-compartment sink stays 30 s at 171 °F. Have the bowl fitted with a heater of its own, 1.93 kW for one filling an hour, or sanitise with chemicals.',
      },
    ],
  },
  {
    name: '140 °F, the bowls not measured',
    plan: sinkPlan({ depth: null }, f(140)),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: f(140),
        limit: LIMIT,
        says: 'Hot water comes at 140 °F; ware in the last bowl of the three-compartment sink stays 30 s at 171 °F. Have the bowl fitted with a heater of its own, or sanitise with chemicals.',
      },
    ],
  },
  {
    name: '77 °C, as the code prints it',
    plan: sinkPlan({}, 77, 'metric'),
    expect: [{ verdict: 'clear', subjects, measured: 77, limit: 77 }],
  },
  { name: '76.5 °C', plan: sinkPlan({}, 76.5, 'metric'), expect: [{ verdict: 'stop', subjects, measured: 76.5, limit: 77 }] },
  {
    name: '140 °F, and nobody knows whether the bowl has a heater',
    plan: sinkPlan({ heater: null }, f(140)),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        limit: LIMIT,
        asks: 'things.4.basins.heater',
        says: 'Hot water comes at 140 °F; ware in the last bowl of the three-compartment sink stays 30 s at 171 °F. Say whether the bowl has a heater of its own, 1.93 kW for one filling an hour.',
      },
    ],
  },
  {
    name: '171 °F, where it does not matter whether the bowl has a heater',
    plan: sinkPlan({ heater: null }, f(171)),
    expect: [{ verdict: 'clear', subjects, measured: f(171), limit: LIMIT }],
  },
  {
    name: '140 °F, with a heater in the bowl',
    plan: sinkPlan({ heater: true }, f(140)),
    expect: [
      {
        verdict: 'clear',
        part: 'heater',
        subjects,
        measured: true,
        limit: true,
        says: 'The last bowl of the three-compartment sink has a heater of its own, 1.93 kW for one filling an hour; ware stays 30 s in it at 171 °F. Water so hot burns: baskets with long handles.',
      },
    ],
  },
  {
    name: 'with a heater in the bowl, hot water not known',
    plan: sinkPlan({ heater: true }, null),
    expect: [{ verdict: 'clear', part: 'heater', subjects, measured: true, limit: true }],
  },
  { name: 'by chemicals', plan: sinkPlan({ sanitizing: 'chemical' }, f(140)), expect: [] },
  {
    name: 'how it sanitises is not known',
    plan: sinkPlan({ sanitizing: null }, f(140)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'things.4.basins.sanitizing' }],
  },
  {
    name: 'its make is not known',
    plan: sinkPlan(null, f(140)),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'things.4.basins' }],
  },
  {
    name: 'hot water is not known',
    plan: sinkPlan({}, null),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'supply.hotWaterC' }],
  },
  { name: 'no such sink', plan: linePlan(), expect: [] },
]);
