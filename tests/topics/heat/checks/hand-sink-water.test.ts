import type { Codes, Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/heat/checks/hand-sink-water';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const f = (value: number) => toSI(value, 'F');
const sinkPlan = (hotF: number | null, code: Codes['handSinkWater'] = 'strictest'): Plan =>
  linePlan({}, (plan) => {
    plan.things = plan.things.filter(({ kind }) => kind !== 'hand-sink');
    addThing(plan, 'sink', 30_000, 30_000, 430, 380, { kind: 'hand-sink' });
    plan.supply.hotWaterC = hotF === null ? null : f(hotF);
    plan.codes.handSinkWater = code;
  });
const found = (verdict: 'clear' | 'stop', measured: number, limit: number) => ({
  verdict,
  subjects: ['sink'],
  measured: f(measured),
  limit: f(limit),
});

/** WAC 246-215-05210: 100 °F (read); FDA Food Code 2022, 5-202.12: 85 °F, in a public copy. */
describeCheck(check, [
  { name: '100 °F', plan: sinkPlan(100), expect: [found('clear', 100, 100)] },
  {
    name: '95 °F',
    plan: sinkPlan(95),
    expect: [
      {
        ...found('stop', 95, 100),
        says: 'Hot water comes at 95 °F and the food code of 2017 asks for 100 °F at the hand sink: have it made hotter.',
      },
    ],
  },
  { name: '95 °F, food code of 2017', plan: sinkPlan(95, 'food-code-2017'), expect: [found('stop', 95, 100)] },
  { name: '95 °F, food code of 2022', plan: sinkPlan(95, 'food-code-2022'), expect: [found('clear', 95, 85)] },
  { name: '84 °F, food code of 2022', plan: sinkPlan(84, 'food-code-2022'), expect: [found('stop', 84, 85)] },
  {
    name: 'the hot water is not known',
    plan: sinkPlan(null),
    expect: [{ verdict: 'ask', subjects: ['sink'], measured: null, asks: 'supply.hotWaterC' }],
  },
  { name: 'no hand sink', plan: linePlan({}, (plan) => void (plan.things = [])), expect: [] },
]);
