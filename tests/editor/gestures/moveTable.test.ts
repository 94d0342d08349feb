import { describe, expect, it } from 'vitest';
import { endsOf, joinBy, turnRound } from '../../../src/editor/gestures/moveTable';
import { edit, freeTable, type Plan, type Table } from '../../../src/plan';
import { deriveScene } from '../../../src/scene';
import { nearly } from '../../support/nearly';
import { at } from '../driver';
import { straightPlan } from '../plans';
import { pull } from '../pulls';

/** The clean table is joined at (4368.5, 800) and 1600 long; its deck reaches from 311 to 1073. */
const plan = straightPlan();
const held = { machine: 'machine', side: 'right', reversed: false } as const;
const clean = ({ tables }: Plan) => tables.find(({ id }) => id === 'clean-table') as Table;
const JOINED = { kind: 'joined', machine: 'machine', side: 'right', gap: 0, offset: 0, skewDeg: 0 };
const drag = (dx: number, dy: number, options = {}) => pull(plan, { ids: ['clean-table'] }, dx, dy, { held, ...options });

describe('a joined table', () => {
  it.each([
    { name: 'stays at its door within 250 mm', by: at(250, 0), options: {}, place: JOINED },
    { name: 'comes off beyond', by: at(251, 0), options: {}, place: { kind: 'free', x: 4619.5, y: 800, headingDeg: 0 } },
    { name: 'comes off sideways', by: at(0, 251), options: {}, place: { kind: 'free', x: 4368.5, y: 1051, headingDeg: 0 } },
    {
      name: 'comes off at once with alt',
      by: at(10, 3),
      options: { isFree: true },
      place: { kind: 'free', x: 4378.5, y: 803, headingDeg: 0 },
    },
    { name: 'not held, stays within 150 mm', by: at(150, 0), options: { held: null }, place: JOINED },
    {
      name: 'not held, comes off beyond',
      by: at(151, 0),
      options: { held: null },
      place: { kind: 'free', x: 4519.5, y: 800, headingDeg: 0 },
    },
    // Its end at 5968.5 comes to lie 20 mm before the wall at 8000.
    { name: 'is caught by the wall', by: at(2011.5, 900), options: {}, place: { kind: 'free', x: 6400, y: 1700, headingDeg: 0 } },
    {
      name: 'is not caught with alt',
      by: at(2011.5, 900),
      options: { isFree: true },
      place: { kind: 'free', x: 6380, y: 1700, headingDeg: 0 },
    },
    // Its far end lies 1624.5 mm before the right wall, its front edge 1927 mm before the lower one.
    {
      name: 'keeps to the step from walls',
      by: at(407, 2000),
      options: { reach: 0, step: 50 },
      place: { kind: 'free', x: 4800, y: 2777, headingDeg: 0 },
    },
  ])('$name', ({ by, options, place }) => {
    expect(clean(drag(by.x, by.y, options).plan).place).toEqual(nearly(place));
  });

  it('says what it does, and keeps its hold only while it is joined', () => {
    expect(drag(100, 0)).toMatchObject({ label: 'Join clean table', hold: held, readouts: [] });
    expect(drag(400, 0)).toMatchObject({ label: 'Move clean table', hold: null });
  });

  it('shows the edge of the machine that it is joined to', () => {
    expect(drag(100, 0).guides).toEqual(nearly([{ kind: 'joint', from: at(4368.5, 1155.5), to: at(4368.5, 444.5) }]));
    expect(drag(2011.5, 900).guides?.map(({ kind }) => kind)).toContain('flush');
  });

  it('reads the distances around its first leg', () => {
    // From its middle (5168.5, 692), moved by (400, 1000) to (5568.5, 1692).
    expect(drag(400, 1000, { reach: 0 }).readouts?.map(({ value }) => value)).toEqual(
      nearly([8000 - 6368.5, 4768.5, 5000 - 1692 - 381, 1692 - 381]),
    );
  });

  it('a door never takes it by its far end', () => {
    // Alone, turned off its door: the far end comes to the left door.
    const away = edit(plan, 'away', (draft) => void draft.tables.splice(0, 1)).plan;
    const far = pull(away, { ids: ['clean-table'] }, -737 - 1600, 0, { held });
    expect(clean(far.plan).place.kind).toBe('free');
    const free = edit(away, 'free', freeTable('clean-table')).plan;
    expect(clean(pull(free, { ids: ['clean-table'] }, -737 - 1600, 0).plan)).toMatchObject({
      place: { kind: 'joined', side: 'left' },
      operatorSide: 'left',
    });
  });
});

describe('both ends of a table', () => {
  it('each with the way out of it', () => {
    const table = {
      ...clean(plan),
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 500, turnDeg: 90 },
      ],
    };
    expect(endsOf(table, { x: 10, y: 20, headingDeg: 0 })).toEqual([
      { point: at(10, 20), headingDeg: 0, reversed: false },
      { point: at(1010, 520), headingDeg: 270, reversed: true },
    ]);
  });
});

describe('joining', () => {
  const scene = deriveScene(plan);
  const joined = (table: Table, hold: Parameters<typeof joinBy>[2]) => clean(edit(plan, 'join', joinBy(scene, table, hold).recipe).plan);

  it('at another door it is flush; at its own it keeps its gap', () => {
    const gap = edit(plan, 'gap', (draft) => void Object.assign(draft.tables[1]!.place, { gap: 7 })).plan;
    const keep = joinBy(deriveScene(gap), clean(gap), held);
    expect(clean(edit(gap, 'join', keep.recipe).plan).place).toMatchObject({ side: 'right', gap: 7 });
    const front = joinBy(deriveScene(gap), clean(gap), { ...held, side: 'front' });
    expect(clean(edit(gap, 'join', front.recipe).plan).place).toEqual({ ...JOINED, side: 'front' });
  });

  it('held by its far end it is turned round first', () => {
    const free = edit(plan, 'free', freeTable('clean-table')).plan;
    const before = clean(free);
    const recipe = joinBy(deriveScene(free), before, { ...held, reversed: true }).recipe;
    expect(clean(edit(free, 'join', recipe).plan)).toMatchObject({ place: JOINED, operatorSide: 'left' });
    expect(joined(clean(plan), { ...held, side: 'front', reversed: true }).operatorSide).toBe('right');
  });

  it('shows nothing for a machine that is not there', () => {
    expect(joinBy(scene, clean(plan), { ...held, machine: 'nobody' }).guides).toEqual([]);
  });

  it('turning round leaves other tables as they are', () => {
    const free = edit(plan, 'free', freeTable('clean-table')).plan;
    const after = edit(free, 'turn', turnRound(clean(free))).plan;
    expect(clean(after).place).toEqual(nearly({ kind: 'free', x: 5968.5, y: 800, headingDeg: 180 }));
    expect(after.tables[0]).toEqual(free.tables[0]);
    expect(edit(free, 'turn', turnRound({ ...clean(free), id: 'nobody' })).plan).toEqual(free);
  });
});
