import { check } from '../../../../src/topics/line/checks/line-complete';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const clear = { verdict: 'clear', subjects: ['machine'], measured: 0, limit: 0 } satisfies ExpectedFinding;

describeCheck(check, [
  {
    name: 'a whole line',
    plan: linePlan(),
    expect: [{ ...clear, says: 'The line has its drop-off, scrap opening and clean storage.' }],
  },
  {
    name: 'nowhere to put clean ware away',
    plan: linePlan({}, (plan) => void (plan.things = [])),
    expect: [{ ...clear, verdict: 'watch', measured: 1, says: 'The line has no clean storage. Give it a place.' }],
  },
  {
    name: 'a bare soiled table and no storage',
    plan: linePlan({}, (plan) => {
      plan.things = [];
      tableOf(plan, 'soiled').fittings = [];
    }),
    expect: [
      {
        ...clear,
        verdict: 'watch',
        measured: 3,
        says: 'The line has no drop-off, no scrap opening and no clean storage. Give each a place.',
      },
    ],
  },
  { name: 'not yet a line', plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)), expect: [] },
]);
