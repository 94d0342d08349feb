import { describe, expect, it } from 'vitest';
import { findFamily } from '../../src/catalog';
import { copySelection, duplicateSelection, openPlan, pasteClip, select } from '../../src/editor';
import { edit, type Plan, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { nearly } from '../support/nearly';
import { Driver } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

/** One of everything that can be copied. */
const plan = edit(withThing(straightPlan('direct-vent')), 'all', (draft) => {
  draft.hoods.push({
    id: 'hood-1',
    x: 6000,
    y: 3000,
    rotationDeg: 0,
    width: 1000,
    depth: 900,
    lipHeight: 2000,
    height: 600,
    exhaust: null,
    cavityAir: null,
  });
  draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 });
  draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
  draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
}).plan;
const copied = (ids: string[], of: Plan = plan) => copySelection(select(new Driver(of).state, ids));
const pasted = (ids: string[], of: Plan = plan) => pasteClip(copied(ids, of));
const present = ({ history }: { history: { present: Plan } }) => history.present;

describe('copying', () => {
  it.each([
    { ids: ['machine'], holds: { machines: ['machine'], runs: ['run'], tables: [] } },
    { ids: ['run'], holds: { machines: [], runs: ['run'] } },
    { ids: ['soiled-table', 'clean-table'], holds: { tables: ['soiled-table', 'clean-table'], runs: [] } },
    { ids: ['cart-1', 'hood-1'], holds: { things: ['cart-1'], hoods: ['hood-1'] } },
    { ids: ['column-1', 'drain-1', 'stub-1'], holds: { columns: ['column-1'], floorDrains: ['drain-1'], stubs: ['stub-1'] } },
  ])('$ids', ({ ids, holds }) => {
    const clip = copied(ids).clipboard as unknown as Record<string, { id: string }[]>;
    for (const [list, items] of Object.entries(holds)) expect(clip[list]?.map(({ id }) => id)).toEqual(items);
    expect(clip).toMatchObject({ pasted: 0, source: plan, sheets: [] });
  });

  it.each([[['wall-1']], [['scrap']], [[]]])('%o is nothing to copy, or to cut', (ids) => {
    const state = select(new Driver(plan).state, ids);
    expect(copySelection(state)).toBe(state);
    expect(new Driver(plan).key('x', { ctrl: true }).plan).toBe(plan);
  });

  it('takes the data sheets that its machines need and no others', () => {
    const own = edit(plan, 'own', (draft) => {
      const sheet = structuredClone(findFamily('direct-vent')!);
      draft.sheets.push({ ...sheet, id: 'mine' }, { ...sheet, id: 'other' });
      draft.machines[0]!.sheet = 'mine';
    }).plan;
    expect(copied(['machine'], own).clipboard?.sheets.map(({ id }) => id)).toEqual(['mine']);
    expect(copied(['cart-1'], own).clipboard?.sheets).toEqual([]);
    // Where the plan has the sheet already, it is not added twice.
    expect(present(pasteClip(copied(['machine'], own))).sheets.map(({ id }) => id)).toEqual(['mine', 'other']);
  });
});

describe('pasting', () => {
  it.each([
    { ids: ['cart-1'], list: (of: Plan) => of.things, gives: { id: 'cart-2', x: 2305, y: 3805 } },
    { ids: ['hood-1'], list: (of: Plan) => of.hoods, gives: { id: 'hood-2', x: 6305, y: 3305 } },
    { ids: ['column-1'], list: (of: Plan) => of.room.columns, gives: { id: 'column-2', x: 7305, y: 4305 } },
    { ids: ['drain-1'], list: (of: Plan) => of.room.floorDrains, gives: { id: 'drain-2', x: 5305, y: 3305 } },
    { ids: ['stub-1'], list: (of: Plan) => of.room.stubs, gives: { id: 'stub-2', x: 405, y: 415, z: 1200 } },
    { ids: ['machine'], list: (of: Plan) => of.machines, gives: { id: 'machine-1', x: 4305, y: 1105 } },
  ])('$ids lands 305 mm right and down, with an id of its own', ({ ids, list, gives }) => {
    const state = pasted(ids);
    expect(list(present(state)).at(-1)).toMatchObject(nearly(gives));
    expect(list(present(state))).toHaveLength(list(plan).length + 1);
    expect(state.selection).toContain(gives.id);
    expect(state.history.past.map(({ label }) => label)).toEqual(['Paste']);
    expect(state.clipboard?.pasted).toBe(1);
  });

  it('each further one lands a step on', () => {
    const twice = present(pasteClip(pasted(['cart-1'])));
    expect(twice.things.map(({ id, x, y }) => [id, x, y])).toEqual([
      ['cart-1', 2000, 3500],
      ['cart-2', 2305, 3805],
      ['cart-3', 2610, 4110],
    ]);
  });

  it('a machine brings its run, once moved; a run alone begins at its own machine', () => {
    const both = present(pasted(['machine']));
    expect(both.runs[1]).toMatchObject({ id: 'run-1', machine: 'machine-1' });
    expect(both.runs[1]?.points.map(({ x, y }) => [x, y])).toEqual(
      nearly([
        [4305, 899.5],
        [4305, -389],
      ]),
    );
    const alone = present(pasted(['run']));
    expect(alone.runs[1]).toMatchObject({ id: 'run-1', machine: 'machine' });
    expect(alone.runs[1]?.points.map(({ x, y }) => [x, y])).toEqual(
      nearly([
        [4305, 899.5],
        [4305, -389],
      ]),
    );
    expect(plan.runs[0]?.points[0]).toMatchObject({ x: 4000, y: 594.5 });
    // Into a plan without that machine it can't be pasted.
    expect(present(pasteClip(openPlan(copied(['run', 'cart-1']), emptyPlan()))).runs).toEqual([]);
  });

  it('a table with its machine is joined to the copy; alone it is free where it stood, a step on', () => {
    const both = present(pasted(['machine', 'soiled-table']));
    expect(both.tables[2]).toMatchObject({ id: 'soiled-table-1', place: { kind: 'joined', machine: 'machine-1', side: 'left' } });
    const alone = present(pasted(['soiled-table']));
    expect(alone.tables[2]?.place).toEqual(nearly({ kind: 'free', x: 3936.5, y: 1105, headingDeg: 180 }));
    expect(alone.tables[2]?.fittings.map(({ id, at }) => [id, at])).toEqual([
      ['soiled-landing-1', 765],
      ['pre-rinse-1', 1785],
      ['scrap-1', 2140],
      ['drop-off-1', 2570],
    ]);
    const free = present(pasted(['soiled-table-1'], alone));
    expect(free.tables[3]?.place).toEqual(nearly({ kind: 'free', x: 4241.5, y: 1410, headingDeg: 180 }));
  });

  it('chooses all that is new, fittings with their table', () => {
    expect(pasted(['machine', 'soiled-table', 'cart-1']).selection).toEqual(['machine-1', 'soiled-table-1', 'cart-2', 'run-1']);
  });

  it('an empty clipboard changes nothing', () => {
    const { state } = new Driver(plan);
    expect(pasteClip(state)).toBe(state);
  });

  // The door is 914 wide and begins 1000 along a wall of 8000.
  const withDoor = (from: number, wall = 'wall-3', length = 8000) =>
    edit(emptyPlan(), 'door', (draft) => {
      Object.assign(draft.room.openings[0]!, { from, wall });
      draft.room.outline[1]!.x = length;
      draft.room.outline[2]!.x = length;
    }).plan;
  it.each([
    { name: 'goes beside itself', of: withDoor(1000), from: 1914 },
    { name: 'as long as the wall has room', of: withDoor(6172), from: 7086 },
    { name: 'else before itself', of: withDoor(6173), from: 5259 },
    { name: 'along an upright wall', of: withDoor(3200, 'wall-2'), from: 2286 },
    { name: 'on the last wall', of: withDoor(3200, 'wall-4'), from: 2286 },
  ])('a door $name', ({ of, from }) => {
    const state = pasted(['door-1'], of);
    expect(present(state).room.openings[1]).toMatchObject({ id: 'door-2', from });
    expect(state.selection).toEqual(['door-2']);
  });

  it('a door without its wall stays away', () => {
    const other = edit(emptyPlan(), 'other', (draft) => {
      draft.room.openings = [];
      for (const corner of draft.room.outline) corner.id = `other-${corner.id}`;
    }).plan;
    const state = pasteClip(openPlan(copied(['door-1', 'cart-1'], withThing(emptyPlan())), other));
    expect(present(state).room.openings).toEqual([]);
    expect(present(state).things).toHaveLength(1);
  });
});

describe('doubling', () => {
  it('puts a copy 305 mm right and down, and chooses it', () => {
    const state = duplicateSelection(select(new Driver(plan).state, ['cart-1']));
    expect(present(state).things.map(({ id, x, y }) => [id, x, y])).toEqual([
      ['cart-1', 2000, 3500],
      ['cart-2', 2305, 3805],
    ]);
    expect(state.selection).toEqual(['cart-2']);
    expect(state.history.past.map(({ label }) => label)).toEqual(['Duplicate']);
    expect(state.clipboard).toBeNull();
  });

  it('nothing chosen, nothing doubled', () => {
    const { state } = new Driver(plan);
    expect(duplicateSelection(state)).toBe(state);
  });
});
