import { describe, expect, it } from 'vitest';
import { commit, deleteSelection, dismissMessage, nudgeSelection, redo, rotateSelection, select, undo, wantsKey } from '../../src/editor';
import { selectAll } from '../../src/editor/commands/select';
import { existingIds, findSubject, subjectsOf } from '../../src/editor/subject/subject';
import { edit, type Plan, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { nearly } from '../support/nearly';
import { at, Driver } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

/** One of everything. */
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
  draft.room.openings.push({
    id: 'door-1',
    kind: 'door',
    wall: 'wall-3',
    from: 1000,
    width: 914,
    height: 2032,
    sill: 0,
    swing: 'out',
    hinge: 'start',
  });
  draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 });
  draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
  draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
}).plan;
const chosen = (ids: string[], of: Plan = plan, handle: string | null = null) => ({ ...select(new Driver(of).state, ids), handle });
const labels = ({ history }: { history: { past: readonly { label: string }[] } }) => history.past.map(({ label }) => label);
const present = ({ history }: { history: { present: Plan } }) => history.present;

describe('what can be chosen', () => {
  it.each([
    ['wall-2', 'corner', ['room', 'outline', 1]],
    ['door-1', 'opening', ['room', 'openings', 0]],
    ['column-1', 'column', ['room', 'columns', 0]],
    ['drain-1', 'floor-drain', ['room', 'floorDrains', 0]],
    ['stub-1', 'stub', ['room', 'stubs', 0]],
    ['machine', 'machine', ['machines', 0]],
    ['clean-table', 'table', ['tables', 1]],
    ['clean-landing', 'fitting', ['tables', 1, 'fittings', 0]],
    ['cart-1', 'thing', ['things', 0]],
    ['hood-1', 'hood', ['hoods', 0]],
    ['run', 'run', ['runs', 0]],
  ])('%s is a %s', (id, kind, path) => {
    expect(findSubject(plan, id)).toEqual({ id, kind, path });
  });

  it('nothing else, and once each', () => {
    expect(findSubject(plan, 'nobody')).toBeNull();
    expect(subjectsOf(plan)).toBe(subjectsOf(plan));
    const ids = ['machine', 'run'];
    expect(existingIds(plan, ids)).toBe(ids);
    expect(existingIds(plan, ['machine', 'nobody', 'run'])).toEqual(ids);
  });

  it('each once, without its handle', () => {
    expect(select({ ...new Driver(plan).state, handle: 'right' }, ['run', 'machine', 'run'])).toMatchObject({
      selection: ['run', 'machine'],
      handle: null,
    });
    expect(selectAll(chosen([])).selection).toEqual([
      'column-1',
      'drain-1',
      'stub-1',
      'machine',
      'soiled-table',
      'clean-table',
      'cart-1',
      'hood-1',
      'run',
    ]);
  });

  it('a message is put away once', () => {
    const state = { ...chosen([]), message: { tone: 'note', text: 'x' } } as const;
    expect(dismissMessage(state).message).toBeNull();
    expect(dismissMessage(chosen([])).message).toBeNull();
    const silent = chosen([]);
    expect(dismissMessage(silent)).toBe(silent);
  });
});

describe('removing', () => {
  it.each([
    { ids: ['cart-1'], label: 'Remove cart', left: (of: Plan) => of.things.length },
    { ids: ['machine'], label: 'Remove machine', left: (of: Plan) => of.machines.length },
    { ids: ['scrap'], label: 'Remove scrap opening', left: (of: Plan) => of.tables[0]!.fittings.length - 3 },
    { ids: ['cart-1', 'column-1'], label: 'Remove 2 things', left: (of: Plan) => of.things.length + of.room.columns.length },
    { ids: ['wall-1', 'cart-1'], label: 'Remove cart', left: (of: Plan) => of.things.length },
  ])('$ids: $label', ({ ids, label, left }) => {
    const after = deleteSelection(chosen(ids));
    expect(labels(after)).toEqual([label]);
    expect(left(present(after))).toBe(0);
    expect(after.selection).toEqual(ids.includes('wall-1') ? ['wall-1'] : []);
    expect(present(undo(after))).toEqual(plan);
  });

  it('a wall is refused; nothing chosen is nothing to remove', () => {
    expect(deleteSelection(chosen(['wall-1']))).toMatchObject({
      message: { tone: 'refused', text: 'A wall can’t be removed. Choose one of its corners, or drag a corner onto the next.' },
      history: { present: plan },
    });
    const none = chosen([]);
    expect(deleteSelection(none)).toBe(none);
  });

  const notched = edit(plan, 'notch', (draft) => {
    draft.room.openings = [];
    draft.room.outline.splice(1, 0, { id: 'wall-5', x: 4000, y: -900 });
    draft.tables[0]!.legs.push({ length: 800, turnDeg: -90 });
  }).plan;
  it.each([
    { ids: ['wall-5'], handle: 'corner-wall-5', label: 'Remove corner', check: (of: Plan) => of.room.outline.length === 4 },
    {
      ids: ['run'],
      handle: 'point-1',
      label: 'Remove point of duct run',
      check: (of: Plan) => of.runs[0]!.points.length === 1 && of.runs[0]!.points[0]!.y === 594.5,
    },
    {
      ids: ['soiled-table'],
      handle: 'leg-1',
      label: 'Remove leg of table',
      check: (of: Plan) => of.tables[0]!.legs.length === 1 && of.tables[0]!.legs[0]!.length === 2900,
    },
  ])('the chosen part, $handle', ({ ids, handle, label, check }) => {
    const after = deleteSelection(chosen(ids, notched, handle));
    expect(labels(after)).toEqual([label]);
    expect(check(present(after))).toBe(true);
    // The wall that began at the corner is gone with it.
    expect(after).toMatchObject({ handle: null, selection: ids[0] === 'wall-5' ? [] : ids });
  });

  it('the thing itself where the handle stands for no part', () => {
    expect(labels(deleteSelection(chosen(['cart-1'], plan, 'right')))).toEqual(['Remove cart']);
  });
});

describe('moving by keys', () => {
  const nudged = (ids: string[], dx: number, dy: number, of = plan, handle: string | null = null) =>
    nudgeSelection(chosen(ids, of, handle), at(dx, dy));
  it('past every snap', () => {
    expect(present(nudged(['cart-1'], 3, -7)).things[0]).toMatchObject({ x: 2003, y: 3493 });
    expect(present(nudged(['door-1'], -5, 3)).room.openings[0]?.from).toBeCloseTo(1005, 8);
    expect(present(nudged(['pre-rinse'], -5, 3)).tables[0]?.fittings[1]?.at).toBeCloseTo(1790, 8);
    expect(present(nudged(['wall-2'], -5, 3)).room.outline[1]).toMatchObject({ x: 7995, y: 0 });
    expect(labels(nudged(['cart-1', 'column-1'], 3, 4))).toEqual(['Move 2 things']);
  });

  it('a joined table says why it stays; among others it stays', () => {
    expect(nudged(['soiled-table'], 5, 0)).toMatchObject({
      message: {
        tone: 'refused',
        text: 'Soiled table is joined to its machine: move or turn the machine, drag the table off, or set it free on its card.',
      },
      history: { present: plan },
    });
    const both = present(nudged(['soiled-table', 'cart-1'], 5, 0));
    expect(both.tables).toEqual(plan.tables);
    expect(both.things[0]?.x).toBe(2005);
  });

  it('the chosen handle', () => {
    const after = nudged(['cart-1'], 10, 0, plan, 'right');
    expect(present(after).things[0]).toMatchObject({ x: 2005, width: 810 });
    const table = nudged(['soiled-table'], -10, 0, plan, 'leg-0');
    expect(present(table).tables[0]?.legs[0]?.length).toBeCloseTo(2910, 8);
    const gone = chosen(['cart-1'], plan, 'nowhere');
    expect(nudgeSelection(gone, at(5, 0))).toBe(gone);
  });

  it('what would leave an unsound plan is refused', () => {
    const state = nudged(['wall-2'], -8000, 0);
    expect(state.message?.tone).toBe('refused');
    expect(present(state)).toBe(plan);
  });
});

describe('turning by keys', () => {
  it('one about its own middle', () => {
    const after = rotateSelection(chosen(['cart-1']), 90);
    expect(present(after).things[0]).toMatchObject({ x: 2000, y: 3500, rotationDeg: 90 });
    expect(labels(after)).toEqual(['Turn cart']);
  });

  it('several about the middle of all', () => {
    // 800 × 500 at (2000, 3500) and 300 × 200 at (7000, 4000): from 1600 to 7150 and from 3250 to 4100.
    const after = rotateSelection(chosen(['cart-1', 'column-1', 'soiled-table']), 90);
    const [x, y] = [4375, 3675];
    expect(present(after).things[0]).toMatchObject(nearly({ x: x + 175, y: y - 2375, rotationDeg: 90 }));
    expect(present(after).room.columns[0]).toMatchObject(nearly({ x: x - 325, y: y + 2625, rotationDeg: 90 }));
    expect(labels(after)).toEqual(['Turn 2 things']);
  });

  it.each([
    {
      ids: ['soiled-table'],
      says: 'Soiled table is joined to its machine: move or turn the machine, drag the table off, or set it free on its card.',
    },
    { ids: ['door-1'], says: 'Door can’t be turned.' },
    { ids: ['wall-1'], says: 'Wall 1 can’t be turned.' },
  ])('$ids can’t', ({ ids, says }) => {
    expect(rotateSelection(chosen(ids), 90)).toMatchObject({ message: { tone: 'refused', text: says }, history: { present: plan } });
  });

  it('nothing chosen, nothing turned', () => {
    const none = chosen([]);
    expect(rotateSelection(none, 90)).toBe(none);
  });

  it('R a quarter clockwise, with shift back', () => {
    const turn = (shift: boolean) => {
      const driver = new Driver(plan);
      driver.state = chosen(['cart-1']);
      return driver.key('r', { shift }).plan.things[0]?.rotationDeg;
    };
    expect([turn(false), turn(true)]).toEqual([90, -90]);
  });
});

describe('choosing the next', () => {
  const tab = (ids: string[], shift: boolean) => {
    const driver = new Driver(plan);
    driver.state = chosen(ids);
    return driver.key('Tab', { shift }).state.selection;
  };
  const order = [
    ...['drop-off', 'scrap', 'pre-rinse', 'soiled-landing', 'machine', 'clean-landing'],
    ...[
      'soiled-table',
      'clean-table',
      'hood-1',
      'run',
      'cart-1',
      'door-1',
      'column-1',
      'drain-1',
      'stub-1',
      'wall-1',
      'wall-2',
      'wall-3',
      'wall-4',
    ],
  ];
  it('along the line, then all else', () => {
    expect(tab([], false)).toEqual([order[0]]);
    expect(tab([], true)).toEqual([order.at(-1)]);
    for (const [index, id] of order.entries()) {
      expect(tab([id], false)).toEqual([order[index + 1] ?? id]);
      expect(tab([id], true)).toEqual([order[index - 1] ?? id]);
    }
  });
});

describe('undo and redo', () => {
  const name = (project: string, of: Plan) => edit(of, 'Name', (draft) => void (draft.title.project = project));
  it('keep what is still there chosen, and put away what was said', () => {
    const state = { ...chosen(['cart-1'], plan, 'right'), message: { tone: 'note', text: 'x' }, hover: 'cart-1' } as const;
    const after = commit(state, name('A', plan));
    expect(after).toMatchObject({ selection: ['cart-1'], handle: 'right', message: null, hover: null, preview: null });
    expect(present(undo(after))).toEqual(plan);
    expect(present(redo(undo(after))).title.project).toBe('A');
  });

  it('let go of what is gone, and of its handle', () => {
    const pasted = commit(
      chosen([]),
      edit(plan, 'Add', (draft) => void draft.things.push({ ...draft.things[0]!, id: 'cart-2' })),
    );
    const back = undo({ ...select(pasted, ['cart-1', 'cart-2']), handle: 'right' });
    expect(back).toMatchObject({ selection: ['cart-1'], handle: null });
  });

  it('without anything to undo or redo change nothing', () => {
    const state = chosen(['cart-1']);
    expect(undo(state)).toBe(state);
    expect(redo(state)).toBe(state);
  });

  it('undo in the middle of a drag drops the drag alone', () => {
    const driver = new Driver(plan);
    driver.state = commit(driver.state, name('A', plan));
    driver.down(at(2000, 3500)).move(at(2600, 3500));
    const back = undo(driver.state);
    expect(back).toMatchObject({ preview: null, tool: { tool: 'select', name: 'idle' } });
    expect(present(back).title.project).toBe('A');
  });
});

describe('keys of the table', () => {
  const driven = (ids: string[]) => {
    const driver = new Driver(plan);
    driver.state = chosen(ids);
    return driver;
  };
  it.each([
    { key: 'y', shift: false, redoes: true },
    { key: 'Z', shift: true, redoes: true },
    { key: 'z', shift: false, redoes: false },
  ])('ctrl $key after an undo', ({ key, shift, redoes }) => {
    const driver = driven(['cart-1']).key('Delete').key('z', { ctrl: true });
    expect(driver.plan.things).toHaveLength(1);
    expect(driver.key(key, { ctrl: true, shift }).plan.things).toHaveLength(redoes ? 0 : 1);
  });

  it('shift goes ten times as far; alt is for the browser', () => {
    const moved = (modifiers: object) => driven(['cart-1']).key('ArrowUp', modifiers).plan.things[0]?.y;
    expect([moved({}), moved({ shift: true }), moved({ alt: true })]).toEqual([nearly(3500 - 25.4), nearly(3500 - 254), 3500]);
    expect(wantsKey(driven([]).state, { type: 'key', key: 'a', shift: false, alt: true, ctrl: true })).toBe(false);
  });

  it('Escape lets go one thing at a time', () => {
    const driver = driven(['cart-1']);
    driver.state = { ...driver.state, handle: 'right' };
    expect(driver.key('Escape').state).toMatchObject({ handle: null, selection: ['cart-1'] });
    expect(driver.key('Escape').state.selection).toEqual([]);
    const { state } = driver;
    expect(driver.key('Escape').state).toBe(state);
  });

  it('in the middle of a drag only ctrl Z means something, and drops it', () => {
    const dragging = () => driven([]).down(at(2000, 3500)).move(at(2600, 3500));
    const { state } = dragging();
    for (const [key, ctrl] of [
      ['z', false],
      ['Delete', false],
      ['y', true],
    ] as const)
      expect(wantsKey(state, { type: 'key', key, ctrl, shift: false, alt: false })).toBe(false);
    const dropped = dragging().key('Z', { ctrl: true });
    expect(dropped.state).toMatchObject({ preview: null, tool: { name: 'idle' } });
    expect(dropped.plan).toBe(plan);
  });
});

describe('choosing and dragging with the pointer', () => {
  it('the second button chooses nothing; a finger drags only what was chosen', () => {
    const touch = { pointer: 'touch' } as const;
    expect(new Driver(plan).down(at(2000, 3500), touch).move(at(2600, 3500), touch).path).toContain('select/panning');
    const driver = new Driver(plan).press(at(2000, 3500), touch);
    expect(driver.drag(at(2000, 3500), at(2600, 3500), touch).labels).toEqual(['Move cart']);
  });

  it('a finger slides the paper by what it goes', () => {
    const touch = { pointer: 'touch' } as const;
    const driver = new Driver(emptyPlan()).down(at(2000, 3000), touch).move(at(2500, 2000), touch);
    expect(driver.state.view).toEqual(nearly({ scale: 0.2, dx: 100, dy: -200 }));
    driver.up(at(2500, 2000), touch);
    expect(driver.state.tool).toMatchObject({ tool: 'select', name: 'idle' });
    expect(new Driver(emptyPlan()).down(at(2000, 3000), touch).move(at(2500, 2000), touch).cancel().state.tool).toMatchObject({
      name: 'idle',
    });
  });

  it('a frame with shift adds to what was chosen, and Escape brings that back', () => {
    const driver = new Driver(plan);
    driver.state = chosen(['column-1']);
    driver.down(at(1400, 3000), { shift: true }).move(at(2600, 4000), { shift: true });
    expect(driver.state.selection).toEqual(['column-1', 'cart-1']);
    driver.key('Escape');
    expect(driver.state).toMatchObject({ selection: ['column-1'], preview: null });
    const anew = new Driver(plan);
    anew.state = chosen(['column-1']);
    expect(anew.down(at(1400, 3000)).move(at(2600, 4000)).state.selection).toEqual(['cart-1']);
  });

  it('several chosen things are dragged together, the pressed one first', () => {
    const driver = new Driver(plan);
    driver.state = chosen(['column-1', 'cart-1']);
    driver.drag(at(2000, 3500), at(2300, 3400), { alt: true });
    expect(driver.labels).toEqual(['Move 2 things']);
    expect(driver.plan.room.columns[0]).toMatchObject({ x: 7300, y: 3900 });
  });

  it('after a drag by a handle it stays chosen, but not the one that turns', () => {
    const grip = (from: { x: number; y: number }, to: { x: number; y: number }) => {
      const driver = new Driver(plan);
      driver.state = chosen(['cart-1']);
      return driver.drag(from, to, { alt: true }).state.handle;
    };
    expect(grip(at(2400, 3500), at(2500, 3500))).toBe('right');
    expect(grip(at(2000, 3880), at(2300, 3800))).toBeNull();
  });

  it('a press on a handle chooses it', () => {
    const driver = new Driver(plan);
    driver.state = chosen(['cart-1']);
    expect(driver.press(at(2400, 3500)).state).toMatchObject({ handle: 'right', selection: ['cart-1'] });
    expect(driver.press(at(2100, 3500)).state).toMatchObject({ handle: null, selection: ['cart-1'] });
  });

  it.each([
    {
      name: 'a wall',
      of: emptyPlan(),
      first: at(3000, 5),
      label: 'Add corner',
      check: (of: Plan) => of.room.outline[1]?.x === 3000 && of.room.outline[1]?.y === 0,
    },
    // The leg falls from 2600 to 2627 over 1288.5.
    {
      name: 'a run',
      of: straightPlan('direct-vent'),
      first: at(4000, -100),
      label: 'Add point to duct run',
      check: (of: Plan) => of.runs[0]!.points.length === 3 && Math.abs(of.runs[0]!.points[1]!.z - (2600 + (27 * 694.5) / 1288.5)) < 1e-6,
    },
  ])('two quick presses divide $name', ({ of, first, label, check }) => {
    const driver = new Driver(of).press(first).press(first).send('double', first);
    expect(driver.labels).toEqual([label]);
    expect(check(driver.plan)).toBe(true);
  });

  it('on a thing they change nothing', () => {
    const driver = new Driver(plan).press(at(2000, 3500)).press(at(2000, 3500)).send('double', at(2000, 3500));
    expect(driver.plan).toBe(plan);
    expect(driver.state.selection).toEqual(['cart-1']);
    expect(new Driver(plan).send('double', at(2000, 3500)).plan).toBe(plan);
  });

  it('shift on the floor keeps the choice', () => {
    const driver = new Driver(plan);
    driver.state = chosen(['cart-1']);
    expect(driver.press(at(3000, 4700), { shift: true }).state.selection).toEqual(['cart-1']);
    expect(driver.press(at(3000, 4700)).state.selection).toEqual([]);
  });
});
