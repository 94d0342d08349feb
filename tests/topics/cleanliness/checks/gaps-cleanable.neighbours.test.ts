import { createPlan, type Plan, type Thing } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/gaps-cleanable';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';
import { addColumn, addThing } from '../../../support/roomPlan';

/** Against two subjects: what is narrow there, and what it is left to. */
const between = (subject: string, neighbour: string, verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  subjects: [subject, neighbour],
  measured,
  limit: true,
});
const standing = (subject: string): ExpectedFinding => ({ verdict: 'clear', subjects: [subject], measured: true, limit: true });
const [soiled, clean, machine] = [standing('soiled-table'), standing('clean-table'), standing('machine')];

const INCH = 25.4;

/** The line without anything that stands by itself. */
const bare = (change: (plan: Plan) => void) =>
  linePlan({}, (plan) => {
    plan.things = [];
    change(plan);
  });

/** A hand sink of 600 × 500 far from every wall, with another thing so far to the right of it. */
const besideThing = (kind: Thing['kind'], gap: number, sealed: boolean | null, otherSealed: boolean | null): Plan => {
  const plan = structuredClone(createPlan());
  addThing(plan, 'thing', 2400, 1700, 600, 500, { kind: 'hand-sink', clearBelow: 152.4, sealed });
  addThing(plan, 'other', 2400 + 600 + gap, 1700, 600, 500, { kind, clearBelow: 152.4, sealed: otherSealed });
  return plan;
};

/** A hand sink away from walls, its right side so far from the end of the soiled table. */
const besideTable = (gap: number, tableSealed: boolean): Plan =>
  bare((plan) => {
    tableOf(plan, 'soiled').make.sealed = tableSealed;
    addThing(plan, 'thing', 1050 - gap - 215, 700, 430, 380, { kind: 'hand-sink', clearBelow: 152.4, sealed: false });
  });

/** Both tables off the machine, far from walls, back to back with so much between them. */
const backToBack = (gap: number, soiledSealed: boolean | null, cleanSealed: boolean | null): Plan =>
  bare((plan) => {
    for (const corner of plan.room.outline) if (corner.y > 4000) corner.y += 2000;
    const [before, after] = [tableOf(plan, 'soiled'), tableOf(plan, 'clean')];
    const toBack = before.depth - before.rackLineFromEdge;
    before.place = FREE;
    after.place = { kind: 'free', x: 500, y: 3000 + toBack + gap + toBack, headingDeg: 0 };
    before.make.sealed = soiledSealed;
    after.make.sealed = cleanSealed;
  });

/** The same rule, and the same room to clean, between what stands fast. */
describeCheck(check, [
  {
    name: 'a machine with a column beside it, nearer than its walls',
    plan: bare((plan) => {
      plan.tables = [];
      for (const { hookUp } of plan.machines) hookUp.sealed = false;
      addColumn(plan, 'column', 3950 - 40 - 50, 500, 100);
    }),
    expect: [
      {
        ...between('machine', 'column', 'stop', false),
        says: 'At the left of the machine a gap of 1 ⁹⁄₁₆″ is left to the column: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
    ],
  },
  {
    name: 'two tables back to back, 4 in apart, neither sealed: each is asked to be',
    plan: backToBack(4 * INCH, false, false),
    expect: [
      {
        ...between('soiled-table', 'clean-table', 'stop', false),
        says: 'Behind the soiled table a gap of 4″ is left to the clean table: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
      between('clean-table', 'soiled-table', 'stop', false),
      machine,
    ],
  },
  {
    name: 'two tables back to back, the joint sealed by one of them',
    plan: backToBack(4 * INCH, false, true),
    expect: [between('clean-table', 'soiled-table', 'clear', true), machine],
  },
  {
    name: 'two tables back to back, not known',
    plan: backToBack(4 * INCH, true, null),
    expect: [between('soiled-table', 'clean-table', 'clear', true), machine],
  },
  { name: 'two tables back to back, 14 in apart', plan: backToBack(14 * INCH, false, false), expect: [machine] },
  {
    name: 'two sinks side by side, 2 in apart, neither sealed: each is asked to be',
    plan: besideThing('hand-sink', 2 * INCH, false, false),
    expect: [
      {
        ...between('thing', 'other', 'stop', false),
        says: 'At the right of hand sink 1 a gap of 2″ is left to hand sink 2: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
      between('other', 'thing', 'stop', false),
    ],
  },
  {
    name: 'two sinks side by side, the joint sealed by one of them',
    plan: besideThing('hand-sink', 2 * INCH, false, true),
    expect: [between('other', 'thing', 'clear', true)],
  },
  {
    name: 'two sinks, 2 in apart, not known',
    plan: besideThing('hand-sink', 2 * INCH, null, null),
    expect: [
      { ...between('thing', 'other', 'ask', null), asks: 'things.0.sealed' },
      { ...between('other', 'thing', 'ask', null), asks: 'things.1.sealed' },
    ],
  },
  { name: 'two sinks 14 in apart', plan: besideThing('hand-sink', 14 * INCH, false, false), expect: [] },
  { name: 'a bin beside a sink is rolled away', plan: besideThing('bin', 2 * INCH, false, false), expect: [] },
  {
    name: 'a sink beside the end of a table, neither sealed',
    plan: besideTable(50, false),
    expect: [
      { ...soiled, verdict: 'stop', measured: false },
      {
        ...between('thing', 'soiled-table', 'stop', false),
        says: 'At the right of the hand sink a gap of 1 ¹⁵⁄₁₆″ is left to the soiled table: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
      clean,
      machine,
    ],
  },
  {
    name: 'a sink beside the end of a table whose joints are sealed',
    plan: besideTable(50, true),
    expect: [soiled, clean, machine],
  },
]);
