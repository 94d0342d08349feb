import type { Plan, Thing } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/drain/checks/sink-waste';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';
import { addColumn, addThing } from '../../../support/roomPlan';
import { THREE_BOWLS } from '../../../support/threeBowls';

type Basins = NonNullable<Thing['basins']>;
const FT = 304.8;
/** 90 × 28 in about this place, in front of the room: its near edge is 14 in from its middle. */
const SINK = { x: 2000, y: 3000, width: 2286, depth: 711.2 };

const sinkPlan = (basins: Partial<Basins> | null, others: (plan: Plan) => void = () => {}, change: Partial<Thing> = {}): Plan =>
  linePlan({}, (plan) => {
    for (const table of plan.tables) table.fittings = table.fittings.filter(({ kind }) => kind !== 'sink');
    const own = basins === null ? null : { ...THREE_BOWLS, ...basins };
    addThing(plan, 'sink', SINK.x, SINK.y, SINK.width, SINK.depth, {
      kind: 'three-compartment-sink',
      clearBelow: 152.4,
      basins: own,
      ...change,
    });
    others(plan);
  });

/** One more floor drain, so far down the paper from the middle of the sink; what the machine empties into is the other. */
const drainAt =
  (down: number) =>
  ({ room }: Plan): void => {
    const [first] = room.floorDrains;
    if (first !== undefined) room.floorDrains.push({ ...first, id: 'sink-drain', x: SINK.x, y: SINK.y + down });
  };
const EDGE = SINK.depth / 2;
const SUBJECTS = ['sink', 'sink-drain'];

const way = (verdict: 'clear' | 'stop', feet: number, says?: string): ExpectedFinding => ({
  verdict,
  part: 'way',
  subjects: SUBJECTS,
  measured: (feet * FT) / 1000,
  limit: (15 * FT) / 1000,
  ...(says === undefined ? {} : { says }),
});
const reach = (verdict: 'clear' | 'stop', more: string[] = [], says?: string): ExpectedFinding => ({
  verdict,
  part: 'reach',
  subjects: [...SUBJECTS, ...more],
  measured: verdict === 'clear',
  limit: true,
  ...(says === undefined ? {} : { says }),
});
const direct = (verdict: 'clear' | 'stop', feet: number, says?: string): ExpectedFinding => ({
  verdict,
  part: 'direct',
  subjects: SUBJECTS,
  measured: (feet * FT) / 1000,
  limit: (4 * FT) / 1000,
  ...(says === undefined ? {} : { says }),
});
const asks = (path: string, says: string): ExpectedFinding => ({ verdict: 'ask', subjects: ['sink'], measured: null, asks: path, says });

const noDrains = ({ room }: Plan): void => void (room.floorDrains = []);
const SAY_HOW = 'Say whether the bowls of the three-compartment sink empty over an air gap or are connected directly.';
const DRAW = 'No floor drain is drawn: draw the one that the three-compartment sink empties into, or that is beside it.';

/**
 * Chicago, 0-0-0-2692350: each compartment separately through an air gap, or within 4 ft of a floor drain in the same room (read); indirect waste at most 15 ft (read); no receptor in an inaccessible space (read).
 */
describeCheck(check, [
  {
    name: 'over an air gap, 3 ft from a floor drain in the open',
    plan: sinkPlan({}, drainAt(3 * FT)),
    expect: [
      way(
        'clear',
        3,
        'The bowls of the three-compartment sink empty over an air gap, 3′ 0″ from the floor drain; a waste pipe may run 15′ 0″ in all, its drop counted. Each bowl has a pipe and a gap of its own, and a trap where the pipe runs more than 2′ 6″ on the level.',
      ),
      reach('clear', [], 'The floor drain of the three-compartment sink can be reached and cleaned.'),
    ],
  },
  {
    name: 'the floor drain below the sink, 6 in free above it',
    plan: sinkPlan({}, drainAt(0)),
    expect: [way('clear', 0), reach('clear')],
  },
  {
    name: 'the floor drain below the sink, 5 in free above it',
    plan: sinkPlan({}, drainAt(0), { clearBelow: 127 }),
    expect: [
      reach(
        'stop',
        ['sink'],
        'The floor drain of the three-compartment sink lies under the three-compartment sink, where nobody can empty its strainer; it needs 6″ free above it. Move one of the two.',
      ),
      way('clear', 0),
    ],
  },
  {
    name: 'the floor drain below the sink, and nobody knows how much is free above it',
    plan: sinkPlan({}, drainAt(0), { clearBelow: null }),
    expect: [
      { verdict: 'ask', part: 'reach', subjects: [...SUBJECTS, 'sink'], measured: null, asks: 'things.4.clearBelow' },
      way('clear', 0),
    ],
  },
  {
    name: 'the floor drain in a column',
    plan: sinkPlan({}, (plan) => {
      drainAt(3 * FT)(plan);
      addColumn(plan, 'column', SINK.x, SINK.y + 3 * FT);
    }),
    expect: [reach('stop', ['column']), way('clear', 3)],
  },
  {
    name: 'the floor drain 15 ft away',
    plan: sinkPlan({}, (plan) => {
      noDrainNear(plan);
      drainAt(15 * FT)(plan);
    }),
    expect: [way('clear', 15), reach('clear')],
  },
  {
    name: 'the floor drain 15 ft 1 in away',
    plan: sinkPlan({}, (plan) => {
      noDrainNear(plan);
      drainAt(15 * FT + 25.4)(plan);
    }),
    expect: [
      way(
        'stop',
        15 + 1 / 12,
        'The bowls of the three-compartment sink empty over an air gap, 15′ 1″ from the floor drain; a waste pipe may run 15′ 0″ in all, its drop counted. Set a floor drain nearer.',
      ),
      reach('clear'),
    ],
  },
  {
    name: 'into the floor sink of the machine, which that one must reach already',
    plan: sinkPlan({}, ({ room }) => {
      const [first] = room.floorDrains;
      if (first !== undefined) Object.assign(first, { x: SINK.x, y: SINK.y - 2 * FT });
    }),
    expect: [{ ...way('clear', 2), subjects: ['sink', 'floor-drain'] }],
  },
  { name: 'over an air gap, and no floor drain drawn', plan: sinkPlan({}, noDrains), expect: [asks('room.floorDrains', DRAW)] },
  {
    name: 'connected directly, a floor drain 4 ft from its edge',
    plan: sinkPlan({ waste: 'direct' }, drainAt(EDGE + 4 * FT)),
    expect: [
      direct(
        'clear',
        4,
        'The bowls of the three-compartment sink are connected directly, 4′ 0″ from a floor drain in the same room; up to 4′ 0″ they may be, where local code allows it.',
      ),
    ],
  },
  {
    name: 'connected directly, the nearest 4 ft 1 in from its edge',
    plan: sinkPlan({ waste: 'direct' }, drainAt(EDGE + 4 * FT + 25.4)),
    expect: [
      direct(
        'stop',
        4 + 1 / 12,
        'The bowls of the three-compartment sink are connected directly, 4′ 1″ from a floor drain in the same room, and may be 4′ 0″ at most. Let each bowl empty over an air gap of its own, or have a floor drain set nearer.',
      ),
    ],
  },
  { name: 'connected directly, a floor drain below it', plan: sinkPlan({ waste: 'direct' }, drainAt(0)), expect: [direct('clear', 0)] },
  {
    name: 'connected directly, and no floor drain drawn',
    plan: sinkPlan({ waste: 'direct' }, noDrains),
    expect: [asks('room.floorDrains', DRAW)],
  },
  { name: 'how its bowls empty is not known', plan: sinkPlan({ waste: null }), expect: [asks('things.4.basins.waste', SAY_HOW)] },
  { name: 'its make is not known', plan: sinkPlan(null), expect: [asks('things.4.basins', SAY_HOW)] },
  {
    name: 'another thing with bowls',
    plan: sinkPlan({}, drainAt(3 * FT), { kind: 'other', name: 'Pot sink' }),
    expect: [way('clear', 3), reach('clear')],
  },
  { name: 'another thing without', plan: sinkPlan(null, drainAt(0), { kind: 'other' }), expect: [] },
  { name: 'a hand sink', plan: sinkPlan({}, drainAt(0), { kind: 'hand-sink' }), expect: [] },
  { name: 'no such sink', plan: sinkPlan({}, ({ things }) => void things.pop()), expect: [] },
]);

/** The floor sink of the machine far away, where it takes nothing else. */
function noDrainNear({ room }: Plan): void {
  for (const drain of room.floorDrains) Object.assign(drain, { x: SINK.x + 20 * FT, y: SINK.y - 20 * FT });
}

/** The pre-rinse in the soiled table, 510 mm square, and a floor drain so far down the paper from its middle. */
const fittedPlan = (waste: 'indirect' | 'direct' | null, down: number | null, others: (plan: Plan) => void = () => {}): Plan =>
  linePlan({}, (plan) => {
    const fitting = tableOf(plan, 'soiled').fittings.find(({ kind }) => kind === 'sink');
    if (fitting?.kind !== 'sink') throw new Error('the line has no sink');
    fitting.waste = waste;
    const centre = deriveScene(plan).tables.flatMap(({ fittings }) => fittings.filter((one) => one.fitting.id === fitting.id))[0]?.centre;
    const [first] = plan.room.floorDrains;
    if (first === undefined || centre === undefined) throw new Error('the line has no drain');
    if (down === null) plan.room.floorDrains = [];
    else plan.room.floorDrains.push({ ...first, id: 'sink-drain', x: centre.x, y: centre.y + down });
    others(plan);
  });
const HALF = 255;
const fitted = (found: ExpectedFinding): ExpectedFinding => ({ ...found, subjects: ['pre-rinse', 'soiled-table', 'sink-drain'] });
const ofTable = (path: string, says: string): ExpectedFinding => ({
  verdict: 'ask',
  subjects: ['pre-rinse', 'soiled-table'],
  measured: null,
  asks: path,
  says,
});
const farther = ({ room }: Plan): void => {
  for (const drain of room.floorDrains) if (drain.id !== 'sink-drain') Object.assign(drain, { y: drain.y - 40 * FT });
};

/** The same of a sink in a table (read). */
describeCheck(check, [
  {
    name: 'a sink in a table over an air gap, 3 ft from a floor drain in the open',
    plan: fittedPlan('indirect', 3 * FT),
    expect: [
      fitted(
        way(
          'clear',
          3,
          'The bowl of the pre-rinse empties over an air gap, 3′ 0″ from the floor drain; a waste pipe may run 15′ 0″ in all, its drop counted. It has a pipe and a gap of its own, and a trap where the pipe runs more than 2′ 6″ on the level.',
        ),
      ),
      { ...reach('clear', [], 'The floor drain of the pre-rinse can be reached and cleaned.'), subjects: ['pre-rinse', 'sink-drain'] },
    ],
  },
  {
    name: 'a sink in a table, the floor drain below it 5 in free',
    plan: fittedPlan('indirect', 0, (plan) => void (tableOf(plan, 'soiled').make.clearBelow = 127)),
    expect: [
      {
        ...reach(
          'stop',
          [],
          'The floor drain of the pre-rinse lies under the soiled table, where nobody can empty its strainer; it needs 6″ free above it. Move one of the two.',
        ),
        subjects: ['pre-rinse', 'sink-drain', 'soiled-table'],
      },
      fitted(way('clear', 0)),
    ],
  },
  {
    name: 'a sink in a table, the floor drain 15 ft 1 in away, which takes the machine as well',
    plan: fittedPlan('indirect', 15 * FT + 25.4, farther),
    expect: [
      fitted(
        way(
          'stop',
          15 + 1 / 12,
          'The bowl of the pre-rinse empties over an air gap, 15′ 1″ from the floor drain; a waste pipe may run 15′ 0″ in all, its drop counted. Set a floor drain nearer.',
        ),
      ),
    ],
  },
  {
    name: 'a sink in a table over an air gap, and no floor drain drawn',
    plan: fittedPlan('indirect', null),
    expect: [ofTable('room.floorDrains', 'No floor drain is drawn: draw the one that the pre-rinse empties into, or that is beside it.')],
  },
  {
    name: 'a sink in a table connected directly, a floor drain 4 ft from its edge',
    plan: fittedPlan('direct', HALF + 4 * FT, farther),
    expect: [
      fitted(
        direct(
          'clear',
          4,
          'The bowl of the pre-rinse is connected directly, 4′ 0″ from a floor drain in the same room; up to 4′ 0″ it may be, where local code allows it.',
        ),
      ),
    ],
  },
  {
    name: 'a sink in a table connected directly, the nearest 4 ft 1 in from its edge',
    plan: fittedPlan('direct', HALF + 4 * FT + 25.4, farther),
    expect: [
      fitted(
        direct(
          'stop',
          4 + 1 / 12,
          'The bowl of the pre-rinse is connected directly, 4′ 1″ from a floor drain in the same room, and may be 4′ 0″ at most. Let it empty over an air gap, or have a floor drain set nearer.',
        ),
      ),
    ],
  },
  {
    name: 'nobody knows how a sink in a table empties',
    plan: fittedPlan(null, 3 * FT),
    expect: [
      ofTable('tables.0.fittings.1.waste', 'Say whether the bowl of the pre-rinse empties over an air gap or is connected directly.'),
    ],
  },
]);
