import { describe, expect, it } from 'vitest';
import { commit, redo, select, undo, wantsKey } from '../../src/editor';
import { edit, type Plan } from '../../src/plan';
import { nearly } from '../support/nearly';
import { chosen, fullPlan as plan, present } from './chosen';
import { at, Driver } from './driver';

describe('choosing the next', () => {
  const tab = (ids: string[], shift: boolean) => {
    const driver = new Driver(plan);
    driver.state = chosen(ids);
    return driver.key('Tab', { shift }).state.selection;
  };
  const order = [
    'drop-off',
    'scrap',
    'pre-rinse',
    'soiled-landing',
    'machine',
    'clean-landing',
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
