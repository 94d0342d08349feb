import { findFamily } from '../../../../src/catalog';
import { createPlan, type Plan, type Thing } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/gaps-cleanable';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const of = (subject: string, verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  subjects: [subject],
  measured,
  limit: true,
});
const soiled = of('soiled-table', 'clear', true);
const clean = of('clean-table', 'clear', true);
const machine = of('machine', 'clear', true);
const shelf = of('clean-shelving', 'clear', true);
const sink = of('hand-sink', 'clear', true);

type Spacing = Plan['codes']['spacing'];

const INCH = 25.4;

/** One thing of 600 × 500, its back an inch off a long wall unless it is put elsewhere. */
const thingAt = (kind: Thing['kind'], sealed: boolean | null, change: Partial<Thing> = {}): Plan => {
  const plan = structuredClone(createPlan());
  addThing(plan, 'thing', 2400, 250 + INCH, 600, 500, { kind, clearBelow: 152.4, sealed, ...change });
  return plan;
};

/** The line without anything that stands by itself. */
const bare = (change: (plan: Plan) => void) =>
  linePlan({}, (plan) => {
    plan.things = [];
    change(plan);
  });

/** The right wall, moved so that this much lies behind the clean table; 5 as drawn. */
const behind = (gap: number, sealed: boolean | null, spacing: Spacing = 'strictest') =>
  bare((plan) => {
    for (const corner of plan.room.outline) if (corner.x > 4000) corner.x += gap - 5;
    tableOf(plan, 'clean').make.sealed = sealed;
    plan.codes.spacing = spacing;
  });

/** The machine of the line, sealed or not, its wall so far behind it. */
const machineAt = (sealed: boolean | null, change: (plan: Plan) => void = () => {}) =>
  bare((plan) => {
    for (const { hookUp } of plan.machines) hookUp.sealed = sealed;
    change(plan);
  });

/** A machine with no table, not sealed, in the middle of a great room but for the walls so far from it. */
const alone = (left: number, right: number, back: number, change: (plan: Plan) => void = () => {}) =>
  machineAt(false, (plan) => {
    plan.tables = [];
    for (const item of plan.machines) {
      const { x, y } = item;
      const { width, depth } = findFamily(item.sheet) ?? { width: 0, depth: 0 };
      const [x1, x2, y1] = [x - width / 2 - left, x + width / 2 + right, y - depth / 2 - back];
      plan.room.outline = [
        { id: 'wall-back', x: x1, y: y1 },
        { id: 'wall-right', x: x2, y: y1 },
        { id: 'wall-front', x: x2, y: y + 3000 },
        { id: 'wall-left', x: x1, y: y + 3000 },
      ];
    }
    plan.room.openings = [];
    change(plan);
  });

/**
 * FDA Food Code 4-402.11 as WAC 246-215-04405, “both” in Pennsylvania (read); 14 in, and 14 with 6 in about what
 * is short: Grandview Heights OH 1721.12 (read).
 */
describeCheck(check, [
  {
    name: '5 mm behind both tables, sealed',
    plan: linePlan(),
    expect: [{ ...soiled, says: 'Behind the soiled table a gap of ³⁄₁₆″ is left to the wall, sealed.' }, clean, machine, shelf, sink],
  },
  {
    name: '1/32 in, not sealed: any of the ways will do',
    plan: behind(INCH / 32, false, 'any'),
    expect: [soiled, { ...clean, says: 'The clean table stands against the wall.' }, machine],
  },
  { name: '1/32 in, any of the ways: its sealing is not asked', plan: behind(INCH / 32, null, 'any'), expect: [soiled, clean, machine] },
  {
    name: '1/32 in, not sealed: all together',
    plan: behind(INCH / 32, false, 'all'),
    expect: [of('clean-table', 'stop', false), soiled, machine],
  },
  {
    name: '1/32 in, not sealed: the strictest',
    plan: behind(INCH / 32, false),
    expect: [of('clean-table', 'stop', false), soiled, machine],
  },
  { name: '1/32 in, sealed', plan: behind(INCH / 32, true), expect: [soiled, clean, machine] },
  {
    name: '0.04 in, not sealed',
    plan: behind(0.04 * INCH, false, 'any'),
    expect: [of('clean-table', 'stop', false), soiled, machine],
  },
  {
    name: '10 in, not sealed',
    plan: behind(254, false),
    expect: [
      {
        ...of('clean-table', 'stop', false),
        says: 'Behind the clean table a gap of 10″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
      soiled,
      machine,
    ],
  },
  { name: '10 in, sealed', plan: behind(254, true), expect: [soiled, clean, machine] },
  {
    name: '10 in, not known',
    plan: behind(254, null),
    expect: [{ ...of('clean-table', 'ask', null), asks: 'tables.1.make.sealed' }, soiled, machine],
  },
  { name: '14 in is room to clean', plan: behind(355.6, false), expect: [soiled, machine] },
  {
    name: 'a table in the middle of the room',
    plan: bare((plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [soiled, machine],
  },
  {
    name: 'a machine near its wall, not sealed',
    plan: machineAt(false),
    expect: [of('machine', 'stop', false), soiled, clean],
  },
  {
    name: 'a machine near its wall, not known',
    plan: machineAt(null),
    expect: [{ ...of('machine', 'ask', null), asks: 'machines.0.hookUp.sealed' }, soiled, clean],
  },
  { name: 'alone, 14 in at both sides and 6 in behind', plan: alone(14 * INCH, 14 * INCH, 6 * INCH), expect: [] },
  { name: 'alone, 6 in at both sides and 14 in behind', plan: alone(6 * INCH, 6 * INCH, 14 * INCH), expect: [] },
  {
    name: 'alone, 6 in all around',
    plan: alone(7 * INCH, 6 * INCH, 6.5 * INCH),
    expect: [
      {
        ...of('machine', 'stop', false),
        says: 'At the right of the machine a gap of 6″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
    ],
  },
  {
    name: 'alone, 14 in at one side',
    plan: alone(14 * INCH, 6 * INCH, 6.5 * INCH),
    expect: [of('machine', 'stop', false)],
  },
  {
    name: 'alone, but not on legs',
    plan: alone(14 * INCH, 15 * INCH, 6 * INCH, ({ machines }) => {
      for (const { hookUp } of machines) hookUp.clearBelow = 0;
    }),
    expect: [of('machine', 'stop', false)],
  },
  { name: 'alone, 14 in all around', plan: alone(14 * INCH, 14 * INCH, 14 * INCH), expect: [] },
  {
    name: 'a hand sink 1 in off its wall, not sealed',
    plan: thingAt('hand-sink', false),
    expect: [
      {
        ...of('thing', 'stop', false),
        says: 'Behind the hand sink a gap of 1″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
    ],
  },
  {
    name: 'shelving 1 in off its wall, not sealed',
    plan: thingAt('shelving', false),
    expect: [
      {
        ...of('thing', 'watch', false),
        says: 'Behind the shelving a gap of 1″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″, or let it roll away.',
      },
    ],
  },
  {
    name: 'shelving, not known',
    plan: thingAt('shelving', null),
    expect: [{ ...of('thing', 'ask', null), asks: 'things.0.sealed' }],
  },
  {
    name: 'a sink, not known',
    plan: thingAt('three-compartment-sink', null),
    expect: [{ ...of('thing', 'ask', null), asks: 'things.0.sealed' }],
  },
  { name: 'a sink, sealed', plan: thingAt('three-compartment-sink', true), expect: [of('thing', 'clear', true)] },
  {
    name: 'a sink in a corner: the nearer wall counts',
    plan: thingAt('hand-sink', false, { x: 300 + 0.5 * INCH, y: 250 + 4 * INCH }),
    expect: [
      {
        ...of('thing', 'stop', false),
        says: 'At the left of the hand sink a gap of ½″ is left to the wall: too little to clean, and not sealed. Seal it, or leave 1′ 2″.',
      },
    ],
  },
  { name: 'a cart is rolled away', plan: thingAt('cart', false), expect: [] },
  { name: 'shelving that a hand comes behind', plan: thingAt('shelving', false, { y: 250 + 14 * INCH }), expect: [] },
  {
    name: 'shelving on legs, 6 in off its wall and free at both sides',
    plan: thingAt('shelving', false, { y: 250 + 6 * INCH }),
    expect: [],
  },
  {
    name: 'shelving on the floor, 6 in off its wall',
    plan: thingAt('shelving', false, { y: 250 + 6 * INCH, clearBelow: 0 }),
    expect: [of('thing', 'watch', false)],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
