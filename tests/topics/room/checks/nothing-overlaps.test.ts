import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/room/checks/nothing-overlaps';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { joinBy, linePlan, tableOf } from '../../../support/linePlan';
import { addColumn, addThing, addThingBetween, runOf, setOverhang } from '../../../support/roomPlan';

const clear: ExpectedFinding = { verdict: 'clear', subjects: [], measured: 0, limit: 1 };
const stop = { verdict: 'stop', limit: 1 } as const;

/** Two carts of 600 × 600, the second so far to the right of the first. */
const carts = (apart: number) =>
  linePlan({}, (plan) => {
    addThing(plan, 'cart', 2000, 2200, 600, 600);
    addThing(plan, 'second-cart', 2000 + apart, 2200, 600, 600);
  });

/** A canopy away from the machine, from 1500 to 2500 both ways, its lip at 2000 and its top at 2400, with something tall. */
const underHood = (x0: number, x1: number, height: number) =>
  linePlan({}, (plan) => {
    plan.hoods.push({
      id: 'other-hood',
      x: 2000,
      y: 2000,
      rotationDeg: 0,
      width: 1000,
      depth: 1000,
      lipHeight: 2000,
      height: 400,
      exhaust: null,
      cavityAir: null,
    });
    addThingBetween(plan, 'tall', [x0, 1850], [x1, 2150], { kind: 'shelving', height });
  });

const directVent = (points: [number, number, number][], change: Parameters<typeof linePlan>[1] = () => {}) =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    runOf(plan).points = points.map(([x, y, z]) => ({ x, y, z }));
    change(plan);
  });

describeCheck(check, [
  { name: 'a whole line', plan: linePlan(), expect: [{ ...clear, says: 'Nothing stands in something else: 8 things compared.' }] },
  { name: 'an empty room has nothing to compare', plan: createPlan(), expect: [] },
  {
    name: 'two carts 100 mm in each other',
    plan: carts(500),
    expect: [
      {
        ...stop,
        subjects: ['cart', 'second-cart'],
        measured: 100,
        repairs: ['move-second-cart', 'move-cart'],
        says: 'Cart 9 and cart 10 stand 3 ¹⁵⁄₁₆″ in each other. Move one of them.',
      },
    ],
  },
  { name: 'carts that touch', plan: carts(600), expect: [clear] },
  { name: 'carts in each other by the 1 mm left to drawing', plan: carts(599), expect: [clear] },
  {
    name: 'carts in each other by a little more',
    plan: carts(598.9),
    expect: [{ ...stop, subjects: ['cart', 'second-cart'], measured: 1.1, repairs: ['move-second-cart', 'move-cart'] }],
  },
  {
    name: 'a bin that fits under the deck, whose underside is at 813.6',
    plan: linePlan({}, (plan) => addThing(plan, 'bin', 1600, 400, 300, 300, { kind: 'bin', height: 813 })),
    expect: [clear],
  },
  {
    name: 'a bin too tall by 6.4 mm to go under the deck',
    plan: linePlan({}, (plan) => addThing(plan, 'bin', 1600, 400, 300, 300, { kind: 'bin', height: 820 })),
    expect: [{ ...stop, subjects: ['soiled-table', 'bin'], measured: 6.4, repairs: ['move-bin'] }],
  },
  {
    name: 'a bin under the bowl, which hangs 200 mm below the deck, to 663.6',
    plan: linePlan({}, (plan) => addThing(plan, 'bin', 2165, 480, 300, 300, { kind: 'bin', height: 700 })),
    expect: [{ ...stop, subjects: ['soiled-table', 'bin'], measured: 36.4, repairs: ['move-bin'] }],
  },
  {
    name: 'a column through the table: neither moves',
    plan: linePlan({}, (plan) => addColumn(plan, 'column', 1600, 600)),
    expect: [
      {
        ...stop,
        subjects: ['soiled-table', 'column'],
        measured: 267,
        says: 'The soiled table and a column stand 10 ½″ in each other. Move one of them.',
      },
    ],
  },
  {
    name: 'a table that runs 50 mm into its machine is said at the joint',
    plan: linePlan({}, (plan) => joinBy(plan, 'soiled', { gap: -50 })),
    expect: [clear],
  },
  {
    name: 'a table pushed sideways into the other table’s machine side, by no joint of its own',
    plan: linePlan({}, (plan) => {
      tableOf(plan, 'soiled').place = { kind: 'free', x: 3975, y: 494, headingDeg: 180 };
    }),
    expect: [{ ...stop, subjects: ['machine', 'soiled-table'], measured: 25, repairs: ['move-soiled-table'] }],
  },
  { name: 'what stands wholly under a hood may reach up into it', plan: underHood(1900, 2200, 2300), expect: [clear] },
  {
    name: 'the lip of a hood cuts 100 mm into something tall',
    plan: underHood(2400, 2700, 2300),
    expect: [{ ...stop, subjects: ['tall', 'other-hood'], measured: 100, repairs: ['move-tall'] }],
  },
  { name: 'below the lip nothing meets', plan: underHood(2400, 2700, 2000), expect: [clear] },
  {
    name: 'something taller than the top of the hood over it, by 60 mm',
    plan: underHood(1900, 2200, 2460),
    expect: [{ ...stop, subjects: ['tall', 'other-hood'], measured: 60, repairs: ['move-tall'] }],
  },
  { name: 'a run leaves its own machine through the collar', plan: linePlan({ family: 'direct-vent' }), expect: [clear] },
  {
    name: 'a run goes up through the hood over its machine',
    plan: linePlan({ family: 'direct-vent' }, (plan) => {
      plan.hoods.push({
        id: 'hood',
        x: 0,
        y: 0,
        rotationDeg: 0,
        width: 100,
        depth: 100,
        lipHeight: 2063.6,
        height: 450,
        exhaust: null,
        cavityAir: null,
      });
      setOverhang(plan, 300, 100, 300, 100);
    }),
    expect: [clear],
  },
  {
    name: 'a run 178 mm across through a column of 200: half of both',
    plan: directVent(
      [
        [4318.5, 288.5, 2600],
        [4318.5, 3000, 2600],
        [2000, 3000, 2600],
        [2000, 4400, 2600],
      ],
      (plan) => addColumn(plan, 'column', 3000, 3000),
    ),
    expect: [{ ...stop, subjects: ['run', 'column'], measured: 188.9 }],
  },
  {
    name: 'a run that comes back and lies 20 mm in its own machine, 1880 high',
    plan: directVent([
      [4318.5, 288.5, 2600],
      [3700, 288.5, 2600],
      [3700, 400, 2600],
      [3700, 400, 1948.9],
      [4300, 400, 1948.9],
    ]),
    expect: [{ ...stop, subjects: ['machine', 'run'], measured: 20 }],
  },
]);
