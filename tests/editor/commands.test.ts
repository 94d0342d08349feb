import { describe, expect, it } from 'vitest';
import { deleteSelection, dismissMessage, nudgeSelection, rotateSelection, select, undo } from '../../src/editor';
import { selectAll } from '../../src/editor/commands/select';
import { existingIds, findSubject, subjectsOf } from '../../src/editor/subject/subject';
import { edit, type Plan } from '../../src/plan';
import { nearly } from '../support/nearly';
import { chosen, labels, fullPlan as plan, present } from './chosen';
import { at, Driver } from './driver';

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
