import type { Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/drain/checks/drain-near';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { floorSink, hookedPlan, hookUp } from '../../../support/hookUpPlans';
import { linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';
import { addColumn, addThing } from '../../../support/roomPlan';

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

/** With the drop from 190 mm above the floor to an air gap of 102. */
const way = (verdict: 'clear' | 'stop', inches: number, says?: string): ExpectedFinding => ({
  verdict,
  part: 'way',
  subjects: SUBJECTS,
  measured: metres(inches) + 0.088,
  limit: metres(180),
  ...(says === undefined ? {} : { says }),
});
const trap = (verdict: 'clear' | 'stop', says?: string): ExpectedFinding => ({
  verdict,
  part: 'trap',
  subjects: SUBJECTS,
  measured: verdict === 'clear',
  limit: true,
  ...(says === undefined ? {} : { says }),
});
const untrapped = (wasteTrapped: boolean | null) => (plan: Plan) => hookUp(plan, { wasteTrapped });
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

/** The floor sink straight before the outlet of a machine that comes out so many inches above the floor; a gap of 4 in. */
const near = (inches: number, change: (plan: Plan) => void, height = 190 / 25.4) => {
  const connection = { id: 'drain', kind: 'drain', x: 110, y: 60, z: height * 25.4, size: 50.8, note: '' } as const;
  return linePlan({ family: ownDataSheet({ connections: [connection] }) }, (plan) => {
    change(plan);
    hookUp(plan, { airGap: 101.6 });
    floorSink(plan, {}, { x: OUTLET.x - inches * 25.4, y: OUTLET.y });
  });
};
const rest = (verdict: 'clear', inches: number, height = 190 / 25.4): ExpectedFinding[] => [
  { ...way(verdict, inches), measured: metres(inches + height - 4) },
  { ...fall(verdict, inches), measured: metres(height - inches / 48) },
  reach(verdict),
];

const inOrder = (inches: number, second: ExpectedFinding, height?: number) => rest('clear', inches, height).toSpliced(1, 0, second);

/** Chicago: at most 15 ft in all, a trap above 30 in on the level or 54 in in all (read), ¼ in/ft for 2 in (read), twice the pipe of air gap (read), no receptor out of reach (read). */
describeCheck(check, [
  {
    name: '6 ft away in the free floor',
    plan: away(72),
    expect: [
      way('clear', 72, 'The waste of the machine runs 6′ 3 ⁷⁄₁₆″ to the floor drain, its drop counted; it may run 15′ 0″.'),
      trap('clear', 'The waste pipe of the machine runs more than 2′ 6″ on the level or 4′ 6″ in all, and has a trap of its own.'),
      fall('clear', 72),
      reach('clear', [], 'The floor drain of the machine can be reached and cleaned.'),
    ],
  },
  {
    name: '13 ft: the air gap is just there',
    plan: away(156),
    expect: [way('clear', 156), trap('clear'), fall('clear', 156), reach('clear')],
  },
  {
    name: '14 ft 8 in: near enough, but the pipe ends too low',
    plan: away(176),
    expect: [
      {
        ...fall('stop', 176),
        says: 'Fallen as it must, the waste pipe of the machine ends 3 ¹³⁄₁₆″ above the floor; the air gap needs 4″. Set a floor drain nearer.',
      },
      way('clear', 176),
      trap('clear'),
      reach('clear'),
    ],
  },
  {
    name: '14 ft 8 in, connected directly: it only has to run down',
    plan: away(176, (plan) => {
      for (const { hookUp } of plan.machines) hookUp.waste = 'direct';
    }),
    expect: [fall('clear', 176, 0), reach('clear')],
  },
  {
    name: '14 ft 9 in: with the drop a little more than 15 ft',
    plan: away(177),
    expect: [
      way(
        'stop',
        177,
        'The waste of the machine runs 15′ 0 ⁷⁄₁₆″ to the floor drain, its drop counted, and may run 15′ 0″ at most. Set a floor drain nearer.',
      ),
      fall('stop', 177),
      trap('clear'),
      reach('clear'),
    ],
  },
  {
    name: '30 in on the level without a trap',
    plan: near(30, untrapped(null)),
    expect: inOrder(
      30,
      trap('clear', 'The waste pipe of the machine runs no more than 2′ 6″ on the level or 4′ 6″ in all, and needs no trap of its own.'),
    ),
  },
  {
    name: '31 in on the level without a trap',
    plan: near(31, untrapped(false)),
    expect: [
      trap(
        'stop',
        'The waste pipe of the machine runs more than 2′ 6″ on the level or 4′ 6″ in all, and has no trap of its own. Have one built in, or set a floor drain nearer.',
      ),
      ...rest('clear', 31),
    ],
  },
  {
    name: '31 in on the level, and nobody knows',
    plan: near(31, untrapped(null)),
    expect: [
      {
        verdict: 'ask',
        part: 'trap',
        subjects: SUBJECTS,
        measured: null,
        asks: 'machines.0.hookUp.wasteTrapped',
        says: 'The waste pipe of the machine runs more than 2′ 6″ on the level or 4′ 6″ in all: say whether it has a trap of its own.',
      },
      ...rest('clear', 31),
    ],
  },
  {
    name: '29 in on the level and 26 in down, 55 in in all',
    plan: near(29, untrapped(false), 4 + 26),
    expect: [trap('stop'), ...rest('clear', 29, 4 + 26)],
  },
  {
    name: '29 in on the level and 25 in down, 54 in in all',
    plan: near(29, untrapped(false), 4 + 25),
    expect: inOrder(29, trap('clear'), 4 + 25),
  },
  {
    name: 'as drawn, under the soiled table with 10 in free below it',
    plan: linePlan(),
    expect: [
      { ...way('clear', 0), measured: Math.hypot(410, 140 - 0) / 1000 + 0.088, within: 0.1 },
      trap('clear'),
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
      { ...way('clear', 0), within: 0.6 },
      trap('clear'),
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
      { ...way('clear', 0), within: 0.6 },
      trap('clear'),
      { ...fall('clear', 0), within: 0.02 },
    ],
  },
  {
    name: 'under the machine',
    plan: linePlan({}, (plan) => floorSink(plan, {}, { x: 4318.5, y: 494 })),
    expect: [reach('watch', ['machine']), { ...way('clear', 0), within: 0.6 }, trap('clear'), { ...fall('clear', 0), within: 0.02 }],
  },
  {
    name: 'under a column',
    plan: away(72, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined) addColumn(plan, 'column', drain.x, drain.y);
    }),
    expect: [reach('stop', ['column']), way('clear', 72), trap('clear'), fall('clear', 72)],
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
      trap('clear'),
      fall('clear', 72),
    ],
  },
  {
    name: 'under a cart, which rolls away',
    plan: away(72, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined) addThing(plan, 'cart', drain.x, drain.y, 700, 700);
    }),
    expect: [way('clear', 72), trap('clear'), fall('clear', 72), reach('clear')],
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
