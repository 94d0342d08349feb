import type { Plan } from '../../src/plan';
import { check } from '../../src/services/rules/drain-near';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { floorSink, hookedPlan } from '../support/hookUpPlans';
import { linePlan, tableOf } from '../support/linePlan';
import { addColumn, addThing } from '../support/roomPlan';

/** The drain of the machine as drawn: 110 from the left and 60 from the back of a footprint that begins at 3950, 138.5; 190 high, 2 in. */
const OUTLET = { x: 4060, y: 198.5 };
const SUBJECTS = ['machine', 'floor-drain'];
const metres = (inches: number) => inches * 0.0254;

/** The floor sink so many inches away, where nothing stands over it. */
const away = (inches: number, change: (plan: Plan) => void = () => {}) =>
  hookedPlan({}, (plan) => {
    // Into the free floor: between the tables and to the left.
    const down = 1800;
    const left = Math.sqrt((inches * 25.4) ** 2 - down ** 2);
    floorSink(plan, {}, { x: OUTLET.x - left, y: OUTLET.y + down });
    change(plan);
  });

const way = (verdict: 'clear' | 'stop', inches: number, says?: string): ExpectedFinding => ({
  verdict,
  part: 'way',
  subjects: SUBJECTS,
  measured: metres(inches),
  limit: metres(180),
  ...(says === undefined ? {} : { says }),
});
/** What is left of 190 mm when ¼ in a foot is taken off. */
const fall = (verdict: 'clear' | 'stop', inches: number, limit = metres(4)): ExpectedFinding => ({
  verdict,
  part: 'fall',
  subjects: SUBJECTS,
  measured: 0.19 - metres(inches) / 48,
  limit,
});
const reach = (verdict: 'clear' | 'watch' | 'stop', more: string[] = [], says?: string): ExpectedFinding => ({
  verdict,
  part: 'reach',
  subjects: [...SUBJECTS, ...more],
  measured: verdict === 'clear',
  limit: true,
  ...(says === undefined ? {} : { says }),
});

/** Chicago: at most 15 ft (read, W-AG4), ¼ in/ft for 2 in (read, W-DP1), twice the pipe of air gap (read, W-AG3), no receptor out of reach (read, W-AG6). */
describeCheck(check, [
  {
    name: '6 ft away in the free floor',
    plan: away(72),
    expect: [
      way(
        'clear',
        72,
        'The waste of the machine runs 6′ 0″ to the floor drain: more than 2′ 6″ on the level, so the pipe has a trap of its own.',
      ),
      fall('clear', 72),
      reach('clear', [], 'The floor drain of the machine can be reached and cleaned.'),
    ],
  },
  { name: '13 ft: the air gap is just there', plan: away(156), expect: [way('clear', 156), fall('clear', 156), reach('clear')] },
  {
    name: '14 ft 9 in: near enough, but the pipe ends too low',
    plan: away(177),
    expect: [
      {
        ...fall('stop', 177),
        says: 'Fallen as it must, the waste pipe of the machine ends 3 ¹³⁄₁₆″ above the floor; the air gap needs 4″. Set a floor drain nearer.',
      },
      way('clear', 177),
      reach('clear'),
    ],
  },
  {
    name: '14 ft 9 in, connected directly: it only has to run down',
    plan: away(177, (plan) => {
      for (const { hookUp } of plan.machines) hookUp.waste = 'direct';
    }),
    expect: [fall('clear', 177, 0), reach('clear')],
  },
  {
    name: 'as drawn, under the soiled table with 10 in free below it',
    plan: linePlan(),
    expect: [
      { ...way('clear', 0), measured: Math.hypot(410, 140 - 0) / 1000, within: 0.1 },
      { ...fall('clear', 0), within: 0.02 },
      reach('clear'),
    ],
  },
  {
    name: 'the soiled table has a shelf 4 in above the floor',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'soiled').make.clearBelow = 101.6)),
    expect: [
      reach(
        'stop',
        ['soiled-table'],
        'The floor drain of the machine lies under the soiled table, where nobody can empty its strainer; it needs 6″ free above it. Move one of the two.',
      ),
      { ...way('clear', 0), within: 0.5 },
      { ...fall('clear', 0), within: 0.02 },
    ],
  },
  {
    name: 'the height below the table is not known',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'soiled').make.clearBelow = null)),
    expect: [
      {
        verdict: 'ask',
        part: 'reach',
        subjects: [...SUBJECTS, 'soiled-table'],
        measured: null,
        asks: 'tables.0.make.clearBelow',
        says: 'The floor drain lies under the soiled table: say the free height below it.',
      },
      { ...way('clear', 0), within: 0.5 },
      { ...fall('clear', 0), within: 0.02 },
    ],
  },
  {
    name: 'under the machine',
    plan: linePlan({}, (plan) => floorSink(plan, {}, { x: 4318.5, y: 494 })),
    expect: [reach('watch', ['machine']), { ...way('clear', 0), within: 0.5 }, { ...fall('clear', 0), within: 0.02 }],
  },
  {
    name: 'under a column',
    plan: away(72, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined) addColumn(plan, 'column', drain.x, drain.y);
    }),
    expect: [reach('stop', ['column']), way('clear', 72), fall('clear', 72)],
  },
  {
    name: 'under a work table whose height below is not known',
    plan: away(72, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined) addThing(plan, 'bench', drain.x, drain.y, 1200, 700, { kind: 'work-table' });
    }),
    expect: [
      {
        verdict: 'ask',
        part: 'reach',
        subjects: [...SUBJECTS, 'bench'],
        measured: null,
        asks: `things.${linePlan().things.length}.clearBelow`,
      },
      way('clear', 72),
      fall('clear', 72),
    ],
  },
  {
    name: 'under a cart, which rolls away',
    plan: away(72, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined) addThing(plan, 'cart', drain.x, drain.y, 700, 700);
    }),
    expect: [way('clear', 72), fall('clear', 72), reach('clear')],
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', part: 'way', subjects: ['machine'], measured: null, asks: 'room.floorDrains' }],
  },
  {
    name: 'how the waste is connected is not known: that is asked for elsewhere',
    plan: hookedPlan({ waste: null }),
    expect: [reach('clear')],
  },
]);
