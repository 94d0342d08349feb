import { describe, expect, it } from 'vitest';
import { moveThings, rotateThings, withHoods } from '../../../src/editor/moves/moveThings';
import { reverseTable } from '../../../src/editor/moves/reverseTable';
import { stretchRun } from '../../../src/editor/moves/stretchRun';
import { edit, freeTable, type Plan, type Run, type Table } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { cornerPlan, straightPlan } from '../plans';

type Xyz = readonly [number, number, number];
const run = (points: readonly Xyz[], fanAt: number | null): Run => {
  const [base] = straightPlan('direct-vent').runs;
  return { ...base!, points: points.map(([x, y, z]) => ({ x, y, z })), fan: fanAt === null ? null : { ...base!.fan!, at: fanAt } };
};
const collar = { x: 0, y: 0, z: 1900 };

describe('a run whose machine moves', () => {
  /** A riser of 700, 1000 to the right, 2000 down the paper. */
  const points: Xyz[] = [
    [0, 0, 2600],
    [1000, 0, 2600],
    [1000, 2000, 2600],
  ];
  it.each([
    {
      name: 'its first leg takes up what lies along it',
      by: at(100, 0),
      gives: [
        [100, 0],
        [1000, 0],
        [1000, 2000],
      ],
    },
    {
      name: 'its second leg takes up the rest',
      by: at(0, 50),
      gives: [
        [0, 50],
        [1000, 50],
        [1000, 2000],
      ],
    },
    {
      name: 'each takes its part',
      by: at(-100, 50),
      gives: [
        [-100, 50],
        [1000, 50],
        [1000, 2000],
      ],
    },
  ])('$name', ({ by, gives }) => {
    const after = stretchRun(run(points, null), collar, by);
    expect(after.points.map(({ x, y, z }) => [x, y, z])).toEqual(nearly(gives.map(([x, y]) => [x, y, 2600])));
    expect(after.fan).toBeNull();
  });

  it('a slant leg takes up what lies along it, the rest goes on', () => {
    // The leg runs along (0.6, 0.8). By (100, 0): 60 lies along it, (64, −48) across.
    const after = stretchRun(
      run(
        [
          [0, 0, 2600],
          [600, 800, 2600],
        ],
        null,
      ),
      collar,
      at(100, 0),
    );
    expect(after.points.map(({ x, y }) => [x, y])).toEqual(
      nearly([
        [100, 0],
        [664, 752],
      ]),
    );
  });

  it.each([
    { name: 'a leg of less than 1 mm is a riser', size: 0.9, gives: 50.9 },
    { name: 'one of more is a leg', size: 1.1, gives: 1.1 },
  ])('$name', ({ size, gives }) => {
    expect(stretchRun(run([[size, 0, 2600]], null), collar, at(50, 0)).points[0]?.x).toBeCloseTo(gives, 9);
  });

  it('without a collar it goes along whole as far as its first point', () => {
    const after = stretchRun(run(points, 800), null, at(100, 50));
    expect(after.points.map(({ x, y }) => [x, y])).toEqual(
      nearly([
        [100, 50],
        [1000, 50],
        [1000, 2000],
      ]),
    );
    // 800 along a first leg that is now 900 long.
    expect(after.fan?.at).toBeCloseTo(800, 9);
  });

  it.each([
    // Riser 700, first leg to 1700, second to 3700. By (200, 0) the first leg shrinks to 800.
    { name: 'on the riser stays', fan: 350, by: at(200, 0), gives: 350 },
    { name: 'on the first leg keeps its distance', fan: 1000, by: at(200, 0), gives: 1000 },
    { name: 'stays on a leg that became too short', fan: 1690, by: at(200, 0), gives: 1500 },
    { name: 'at the very end of a leg stays on it', fan: 1700, by: at(-100, 0), gives: 1700 },
    { name: 'on the second leg goes with its beginning', fan: 2000, by: at(200, 0), gives: 1800 },
    { name: 'on the second leg, the first growing', fan: 2000, by: at(-100, 0), gives: 2100 },
    { name: 'on the second leg stays while that grows', fan: 2000, by: at(0, -50), gives: 2000 },
    { name: 'past the end keeps what it is past it', fan: 3750, by: at(200, 0), gives: 3550 },
  ])('its fan $name', ({ fan, by, gives }) => {
    expect(stretchRun(run(points, fan), collar, by).fan).toMatchObject({ at: nearly(gives), attitude: 'upright' });
  });
});

describe('what goes along', () => {
  const twoHoods = edit(straightPlan(), 'two', (draft) => {
    draft.machines.push({ ...draft.machines[0]!, id: 'machine-2', x: 6500 });
    draft.hoods.push(
      { ...draft.hoods[0]!, id: 'hood-2', x: 5250, width: 4000, depth: 2000 },
      { ...draft.hoods[0]!, id: 'hood-3', x: 1000, y: 4000 },
    );
  }).plan;
  it.each([
    { ids: ['machine'], gives: ['machine', 'hood'] },
    { ids: ['machine', 'machine-2'], gives: ['machine', 'machine-2', 'hood', 'hood-2'] },
    { ids: ['machine-2'], gives: ['machine-2'] },
    { ids: ['hood', 'machine'], gives: ['hood', 'machine'] },
    { ids: ['cart'], gives: ['cart'] },
  ])('with $ids: $gives', ({ ids, gives }) => {
    expect(withHoods(deriveScene(twoHoods), ids)).toEqual(gives);
  });

  it('a hood, and a run by its collar; a run that is chosen itself goes whole', () => {
    const plan = straightPlan('direct-vent');
    const move = (ids: string[]) =>
      edit(plan, 'move', moveThings(deriveScene(plan), ids, at(300, 200))).plan.runs[0]!.points.map(({ x, y }) => [x, y]);
    // Riser over the collar at (4000, 594.5), then straight up the paper to −694.
    expect(move(['machine'])).toEqual(
      nearly([
        [4300, 794.5],
        [4300, -694],
      ]),
    );
    expect(move(['machine', 'run'])).toEqual(
      nearly([
        [4300, 794.5],
        [4300, -494],
      ]),
    );
    expect(move(['run'])).toEqual(
      nearly([
        [4300, 794.5],
        [4300, -494],
      ]),
    );
    expect(move(['clean-table'])).toEqual([
      [4000, 594.5],
      [4000, -694],
    ]);
  });

  it('turns about a place, hoods and all', () => {
    const plan = cornerPlan();
    const after = edit(plan, 'turn', rotateThings(deriveScene(plan), ['machine'], 90, at(0, 0))).plan;
    expect(after.machines[0]).toMatchObject(nearly({ x: -800, y: 5000, rotationDeg: 90 }));
    const { x, y } = plan.hoods[0]!;
    expect(after.hoods[0]).toMatchObject(nearly({ x: 0 - y, y: x, rotationDeg: 90 }));
  });
});

describe('a table walked from its other end', () => {
  const free = (change: (table: Table) => void): Table => {
    const plan: Plan = edit(edit(straightPlan(), 'free', freeTable('soiled-table')).plan, 'change', (draft) => {
      const [table] = draft.tables;
      Object.assign(table!, { place: { kind: 'free', x: 1000, y: 2000, headingDeg: 0 } });
      change(table as Table);
    }).plan;
    return plan.tables[0]!;
  };
  const bent = free((table) => {
    table.legs = [
      { length: 1500, turnDeg: 0 },
      { length: 900, turnDeg: 90 },
      { length: 500, turnDeg: -30 },
    ];
  });

  it('begins at the end, and turns the other way', () => {
    const back = reverseTable(bent);
    // 1500 to the right, 900 down, 500 at 60°.
    expect(back.place).toEqual(nearly({ kind: 'free', x: 2750, y: 2900 + 250 * Math.sqrt(3), headingDeg: 240 }));
    expect(back.legs).toEqual([
      { length: 500, turnDeg: 0 },
      { length: 900, turnDeg: 30 },
      { length: 1500, turnDeg: -90 },
    ]);
    expect(back.operatorSide).toBe('right');
    expect(back.fittings.map(({ id, at: middle }) => [id, middle])).toEqual([
      ['soiled-landing', 2900 - 765],
      ['pre-rinse', 2900 - 1785],
      ['scrap', 2900 - 2140],
      ['drop-off', 2900 - 2570],
    ]);
  });

  it('twice is as before', () => {
    expect(reverseTable(reverseTable(bent))).toEqual(nearly(bent));
  });

  it.each([
    {
      name: 'falls the other way',
      deck: { kind: 'fall', jointHeight: 900, fall: -0.02 },
      gives: { kind: 'fall', jointHeight: 842, fall: 0.02 },
    },
    {
      name: 'never begins below the floor',
      deck: { kind: 'fall', jointHeight: 50, fall: -0.1 },
      gives: { kind: 'fall', jointHeight: 0, fall: 0.1 },
    },
    {
      name: 'height not known',
      deck: { kind: 'fall', jointHeight: null, fall: 0.02 },
      gives: { kind: 'fall', jointHeight: null, fall: -0.02 },
    },
    {
      name: 'fall not known',
      deck: { kind: 'fall', jointHeight: 900, fall: null },
      gives: { kind: 'fall', jointHeight: null, fall: null },
    },
    { name: 'surveyed', deck: { kind: 'heights', heights: [900, null, 880] }, gives: { kind: 'heights', heights: [880, null, 900] } },
  ] as const)('its deck: $name', ({ deck, gives }) => {
    const table = free((draft) => void Object.assign(draft, { deck }));
    expect(reverseTable(table).deck).toEqual(nearly(gives));
  });

  it('level, its fall stays a plain zero', () => {
    const back = reverseTable(free((draft) => void Object.assign(draft, { deck: { kind: 'fall', jointHeight: 900, fall: 0 } })));
    expect(back.deck.kind === 'fall' && Object.is(back.deck.fall, 0)).toBe(true);
  });

  it('joined stays as it is', () => {
    const [table] = straightPlan().tables;
    expect(reverseTable(table!)).toBe(table);
  });
});
