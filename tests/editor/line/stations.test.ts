import { describe, expect, it } from 'vitest';
import { insertStation } from '../../../src/editor';
import { makeRoom } from '../../../src/editor/line/makeRoom';
import { newFitting } from '../../../src/editor/line/newFitting';
import { shapeOf, stationOf } from '../../../src/editor/line/stations';
import { edit, type Plan, type Table } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { done, refused, spans, without } from '../outcomes';
import { cornerPlan, straightPlan } from '../plans';

/** Soiled: landing 0–1530, pre-rinse 1530–2040, scrap 2040–2240, drop-off 2240–2900. Clean: landing 35–1565 of 1600. */
const plan = straightPlan();

describe('making room on a table', () => {
  const table = (pairs: readonly (readonly [number, number])[], length: number): Table => ({
    ...plan.tables[0]!,
    legs: [
      { length: 500, turnDeg: 0 },
      { length: length - 500, turnDeg: 0 },
    ],
    fittings: pairs.map(([from, to], i) => ({ id: `f${i}`, kind: 'drop-off', at: (from + to) / 2, length: to - from })),
  });
  it.each([
    { name: 'on a bare table', pairs: [], length: 2000, from: 300, size: 400, gives: 500, after: [], grows: 2000 },
    { name: 'never before its start', pairs: [], length: 2000, from: -100, size: 400, gives: 200, after: [], grows: 2000 },
    { name: 'beyond the end it grows', pairs: [], length: 2000, from: 1700, size: 400, gives: 1900, after: [], grows: 2100 },
    {
      name: 'in a gap that is wide enough',
      pairs: [
        [0, 300],
        [800, 1000],
      ],
      length: 2000,
      from: 300,
      size: 500,
      gives: 550,
      after: [
        [0, 300],
        [800, 1000],
      ],
      grows: 2000,
    },
    {
      name: 'in a narrow gap the next one moves',
      pairs: [
        [0, 300],
        [700, 1000],
      ],
      length: 2000,
      from: 300,
      size: 500,
      gives: 550,
      after: [
        [0, 300],
        [800, 1100],
      ],
      grows: 2000,
    },
    {
      name: 'and all beyond it, and the table grows',
      pairs: [
        [0, 300],
        [400, 900],
        [1500, 2000],
      ],
      length: 2000,
      from: 300,
      size: 500,
      gives: 550,
      after: [
        [0, 300],
        [800, 1300],
        [1900, 2400],
      ],
      grows: 2400,
    },
    {
      name: 'not over one that begins before',
      pairs: [[200, 500]],
      length: 2000,
      from: 400,
      size: 300,
      gives: 650,
      after: [[200, 500]],
      grows: 2000,
    },
    {
      name: 'before one whose middle lies there',
      pairs: [[200, 600]],
      length: 2000,
      from: 400,
      size: 300,
      gives: 550,
      after: [[700, 1100]],
      grows: 2000,
    },
  ])('$name', ({ pairs, length, from, size, gives, after, grows }) => {
    const target = table(pairs as [number, number][], length);
    expect(makeRoom(target, from, size)).toBe(gives);
    expect(spans(target).map(([, a, b]) => [a, b])).toEqual(after);
    expect(target.legs).toEqual([
      { length: 500, turnDeg: 0 },
      { length: grows - 500, turnDeg: 0 },
    ]);
  });

  it('overshelves hang above and stay', () => {
    const target = table([[0, 300]], 2000);
    target.fittings.push({ id: 'shelf', kind: 'overshelf', at: 700, length: 800, depth: 305, height: 1524 });
    expect(makeRoom(target, 300, 400)).toBe(500);
    expect(target.fittings[1]?.at).toBe(700);
  });
});

describe('usual sizes', () => {
  it.each([
    ['drop-off', { length: 660 }],
    ['scrap', { length: 200, width: 460 }],
    ['sink', { length: 510, width: 510, bowlDepth: 200, spray: false }],
    ['landing', { length: 508 }],
    ['overshelf', { length: 1219, depth: 305, height: 1524 }],
  ] as const)('a %s', (kind, gives) => {
    expect(newFitting(kind, 2000)).toMatchObject({ kind, ...gives });
  });

  it('an overshelf is no longer than its table', () => {
    expect(newFitting('overshelf', 900).length).toBe(900);
  });

  it.each([
    ['soiled-landing', 3, 2, 3 * 510],
    ['clean-landing', 3, 2, 2 * 510],
    ['soiled-landing', 0, 2, 510],
    ['drop-off', 3, 2, 660],
    ['scrap', 3, 2, 200],
  ] as const)('%s with %d racks before and %d after is %d long', (kind, racksBefore, racksAfter, length) => {
    expect(shapeOf(kind, { ...plan.settings, rackPitch: 510, racksBefore, racksAfter }).length).toBe(length);
  });

  it('a pre-rinse sink has its spray', () => {
    expect(shapeOf('pre-rinse', plan.settings)).toMatchObject({ kind: 'sink', spray: true });
  });

  it.each([
    ['landing', 'soiled', 'soiled-landing'],
    ['sink', 'soiled', 'pre-rinse'],
    ['scrap', 'soiled', 'scrap'],
    ['drop-off', 'soiled', 'drop-off'],
    ['overshelf', 'soiled', null],
    ['landing', 'clean', 'clean-landing'],
    ['sink', 'clean', null],
  ] as const)('a %s on the %s table is %s', (kind, role, station) => {
    expect(stationOf({ ...newFitting(kind, 1000), id: 'f', at: 0 }, role)).toBe(station);
  });
});

describe('inserting a station', () => {
  const insert = (of: Plan, kind: Parameters<typeof insertStation>[2], after: Parameters<typeof insertStation>[3]) =>
    done(insertStation(of, 'machine', kind, after));
  it.each([
    {
      name: 'between its neighbours, nearer to the joint',
      of: without(plan, 'scrap'),
      kind: 'scrap',
      after: 'drop-off',
      gives: [2040, 2240],
    },
    {
      name: 'beyond all that come later, where none is named',
      of: without(plan, 'scrap'),
      kind: 'scrap',
      after: null,
      gives: [2040, 2240],
    },
    {
      name: 'at the joint, where nothing is nearer',
      of: without(plan, 'soiled-landing', 'pre-rinse', 'scrap'),
      kind: 'soiled-landing',
      after: null,
      gives: [0, 3 * 508],
    },
    {
      name: 'before its anchor, as near to the joint as it must',
      of: without(plan, 'pre-rinse', 'soiled-landing'),
      kind: 'pre-rinse',
      after: 'scrap',
      gives: [1530, 2040],
    },
    { name: 'the drop-off, beyond all', of: without(plan, 'drop-off'), kind: 'drop-off', after: null, gives: [2240, 2900] },
    {
      name: 'the drop-off, after none that is there',
      of: without(plan, 'drop-off', 'scrap'),
      kind: 'drop-off',
      after: 'scrap',
      gives: [2040, 2700],
    },
    {
      name: 'on the clean table beyond its anchor',
      of: plan,
      kind: 'clean-landing',
      after: 'clean-landing',
      gives: [1565, 1565 + 3 * 508],
    },
  ] as const)('$name', ({ of, kind, after, gives }) => {
    const { plan: next, select } = insert(of, kind, after);
    const row = next.tables.flatMap(spans).find(([id]) => id === select?.[0]);
    expect(row?.slice(1)).toEqual(nearly([...gives]));
  });

  it.each([
    ['scrap', 'Add scrap opening'],
    ['pre-rinse', 'Add pre rinse'],
    ['soiled-landing', 'Add soiled landing'],
  ] as const)('%s is called by its word', (kind, label) => {
    expect(insert(plan, kind, null).label).toBe(label);
  });

  it('with no table it brings one, 1600 long, at the side that makes a line', () => {
    const bare = without(plan, 'soiled-table', 'clean-table');
    const { plan: next } = insert(bare, 'pre-rinse', null);
    expect(next.tables).toMatchObject([
      { role: 'soiled', place: { side: 'left', machine: 'machine' }, operatorSide: 'left', legs: [{ length: 1600, turnDeg: 0 }] },
    ]);
    expect(insert(bare, 'clean-landing', null).plan.tables[0]).toMatchObject({
      role: 'clean',
      place: { side: 'right' },
      operatorSide: 'right',
    });
  });

  it.each([
    { name: 'opposite the clean table at the right', of: without(plan, 'soiled-table'), kind: 'scrap', side: 'left' },
    { name: 'opposite the soiled table at the left', of: without(plan, 'clean-table'), kind: 'clean-landing', side: 'right' },
    { name: 'beside the clean table at the front', of: without(cornerPlan(), 'soiled-table'), kind: 'scrap', side: 'left' },
  ] as const)('a table comes $name', ({ of, kind, side }) => {
    expect(insert(of, kind, null).plan.tables.at(-1)?.place).toMatchObject({ side });
  });

  it('a table of another machine stays out of it', () => {
    const two = edit(without(plan, 'soiled-table'), 'two', (draft) => {
      draft.machines.push({ ...draft.machines[0]!, id: 'machine-2', x: 6500, y: 3500 });
      draft.tables.push({
        ...draft.tables[0]!,
        id: 'third',
        fittings: [],
        place: { kind: 'joined', machine: 'machine-2', side: 'left', gap: 0, offset: 0, skewDeg: 0 },
      });
    }).plan;
    expect(insert(two, 'scrap', null).plan.tables.at(-1)?.place).toMatchObject({ machine: 'machine', side: 'left' });
  });

  it.each([
    [insertStation(plan, 'nobody', 'scrap', null), 'This machine is no longer in the plan.'],
    [insertStation(plan, 'machine', 'machine', null), 'The line has its machine.'],
    [
      insertStation(without(plan, 'clean-table'), 'machine', 'storage', null),
      'Storage follows the clean table. Add a clean landing first.',
    ],
  ])('says why not: %o', (outcome, says) => {
    expect(refused(outcome)).toBe(says);
  });

  it('says where no door is free', () => {
    const full = edit(without(plan, 'clean-table'), 'full', (draft) => {
      const [first] = draft.tables;
      for (const side of ['right', 'front'] as const)
        draft.tables.push({
          ...first!,
          id: `more-${side}`,
          fittings: [],
          place: { kind: 'joined', machine: 'machine', side, gap: 0, offset: 0, skewDeg: 0 },
        });
    }).plan;
    expect(refused(insertStation(full, 'machine', 'clean-landing', null))).toBe('No door of the machine is free for a clean table.');
  });
});

describe('storage beyond the clean table', () => {
  // Shelving 1219 × 457, 150 beyond the end at 5968.5; the back edge of the table at 311.
  it('its back in line with the table’s', () => {
    const { plan: next, label, select } = done(insertStation(plan, 'machine', 'storage', null));
    expect(next.things).toMatchObject([
      nearly({ kind: 'shelving', x: 5968.5 + 150 + 609.5, y: 311 + 228.5, rotationDeg: 0, width: 1219, depth: 457 }),
    ]);
    expect([label, select]).toEqual(['Add storage', ['shelving-1']]);
  });

  it('where people stand on the other side', () => {
    const turned = edit(plan, 'turn', (draft) => void (draft.tables[1]!.operatorSide = 'left')).plan;
    // The back edge lies 489 below the rack line, and the front looks up the paper.
    expect(done(insertStation(turned, 'machine', 'storage', null)).plan.things[0]).toMatchObject(
      nearly({ y: 800 + 489 - 228.5, rotationDeg: 180 }),
    );
  });

  it('down the paper, beyond a table at the front', () => {
    // The clean table runs down from (5000, 1155.5) over 1600; people stand at its right hand, at the left of the paper.
    const [shelf] = done(insertStation(cornerPlan(), 'machine', 'storage', null)).plan.things;
    expect(shelf).toMatchObject(nearly({ x: 5000 + 489 - 228.5, y: 1155.5 + 1600 + 150 + 609.5, rotationDeg: 90 }));
  });
});
