import type { Fitting } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/pre-rinse-side';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

const SINK = { kind: 'sink', length: 510, width: 510, bowlDepth: 200, rackSlide: null, waste: null } as const;
const sprayOnClean: Fitting = { ...SINK, id: 'wrong-sink', at: 900, spray: true };

const right = { verdict: 'clear', subjects: ['pre-rinse', 'soiled-table'], measured: 'soiled', limit: 'soiled' } satisfies ExpectedFinding;
const wrong = { verdict: 'stop', subjects: ['wrong-sink', 'clean-table'], measured: 'clean', limit: 'soiled' } satisfies ExpectedFinding;
const none = { verdict: 'watch', subjects: ['soiled-table'], measured: 'none', limit: 'soiled' } satisfies ExpectedFinding;

describeCheck(check, [
  { name: 'on the soiled table', plan: linePlan(), expect: [{ ...right, says: 'The pre-rinse sink is on the soiled table.' }] },
  {
    name: 'on the clean table, room for it on the soiled one',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'clean').fittings = [sprayOnClean];
      tableOf(plan, 'soiled').fittings = tableOf(plan, 'soiled').fittings.filter(({ id }) => id !== 'pre-rinse');
    }),
    expect: [
      {
        ...wrong,
        repairs: ['move-pre-rinse'],
        says: 'The sink with the spray is on the clean table and would soil clean ware. Move it to the soiled table.',
      },
    ],
  },
  {
    name: 'on the clean table, and no room on the soiled one',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'clean').fittings = [sprayOnClean];
      tableOf(plan, 'soiled').fittings = [{ id: 'soiled-landing', kind: 'landing', at: 1450, length: 2900 }];
    }),
    expect: [wrong],
  },
  {
    name: 'on the clean table, a plain sink waits on the soiled one',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'clean').fittings = [sprayOnClean];
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'sink') fitting.spray = false;
    }),
    expect: [{ ...wrong, repairs: ['move-spray'] }],
  },
  {
    name: 'on both: the one on the clean table is the fault',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').fittings = [sprayOnClean])),
    expect: [{ ...wrong, repairs: ['take-spray-off'] }],
  },
  {
    name: 'a plain sink on the clean table does no harm',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').fittings = [{ ...sprayOnClean, spray: false }])),
    expect: [right],
  },
  {
    name: 'a sink without a spray is no pre-rinse',
    plan: linePlan({}, (plan) => {
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'sink') fitting.spray = false;
    }),
    expect: [{ ...none, repairs: ['hang-spray'], says: 'The line has no pre-rinse. Put a sink with a spray hose on the soiled table.' }],
  },
  { name: 'no sink at all', plan: linePlan({}, (plan) => void (tableOf(plan, 'soiled').fittings = [])), expect: [none] },
  { name: 'no soiled table', plan: linePlan({}, (plan) => void (plan.tables = [tableOf(plan, 'clean')])), expect: [] },
]);
