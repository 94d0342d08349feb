import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/scupper';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const scupper = (has: boolean | null, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    tableOf(plan, 'soiled').make.scupper = has;
    change(plan);
  });
const is = (verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  subjects: ['soiled-table'],
  measured,
  limit: true,
});

/** The pre-rinse at the joint itself, as long as the table but for its last 100 mm. */
const sinkAtJoint = (plan: Plan) => {
  const table = tableOf(plan, 'soiled');
  table.fittings = table.fittings.flatMap((item) => (item.kind === 'sink' ? [{ ...item, at: 1400, length: 2800 }] : []));
};

/** A university's design standard, Division 13 (secondary: a watch); both tables fall to the machine by common practice. */
describeCheck(check, [
  {
    name: 'a scupper',
    plan: scupper(true),
    expect: [{ ...is('clear', true), says: 'The soiled table has a scupper before the machine, which takes its soil water.' }],
  },
  {
    name: 'none',
    plan: scupper(false),
    expect: [
      {
        ...is('watch', false),
        says: 'The soiled table drains its soil water into the machine. Have a scupper made across the deck before it, with a drain of its own.',
      },
    ],
  },
  { name: 'not known', plan: scupper(null), expect: [{ ...is('ask', null), asks: 'tables.0.make.scupper' }] },
  { name: 'a sink takes all of its water', plan: scupper(null, sinkAtJoint), expect: [is('clear', true)] },
  {
    name: 'a level table holds its water, and spills it at the machine',
    plan: scupper(false, (plan) => void (tableOf(plan, 'soiled').deck = { kind: 'fall', jointHeight: 863.6, fall: 0 })),
    expect: [is('watch', false)],
  },
  {
    name: 'a fall that is not known',
    plan: scupper(false, (plan) => void (tableOf(plan, 'soiled').deck = { kind: 'fall', jointHeight: 863.6, fall: null })),
    expect: [is('watch', false)],
  },
  { name: 'a table that is joined to nothing', plan: scupper(false, (plan) => void (tableOf(plan, 'soiled').place = FREE)), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
