import { describe, expect, it } from 'vitest';
import { createHistory, createPlan, edit, type History, moveItems, push, redo, setField, undo } from '../../src/plan';

const plan = createPlan();
const ceiling = (history: History) => history.present.room.ceilingHeight;
const set = (history: History, value: number, limit?: number) =>
  push(history, edit(history.present, `Ceiling ${value}`, setField(['room', 'ceilingHeight'], value)), limit);

describe('history', () => {
  const three = [2500, 2600, 2700].reduce((history, value) => set(history, value), createHistory(plan));

  it('goes back and forth', () => {
    expect([three, undo(three), undo(undo(three)), undo(undo(undo(three)))].map(ceiling)).toEqual([2700, 2600, 2500, 3048]);
    expect(undo(undo(undo(three))).present).toEqual(plan);
    expect(redo(undo(three))).toEqual(three);
  });

  it('stays as it is at either end', () => {
    expect(undo(createHistory(plan)).present).toBe(plan);
    expect(redo(three)).toBe(three);
  });

  it('forgets what was undone when something else is done', () => {
    const other = set(undo(undo(three)), 2900);
    expect(other.future).toEqual([]);
    expect(other.past.map(({ label }) => label)).toEqual(['Ceiling 2500', 'Ceiling 2900']);
  });

  it('does not record a change that changed nothing', () => {
    expect(push(three, edit(three.present, 'Nothing', moveItems([], { x: 1, y: 1 })))).toBe(three);
    expect(set(three, 2700)).toBe(three);
  });

  it('keeps the newest changes up to its limit', () => {
    const short = [1, 2, 3, 4].reduce((history, n) => set(history, 2000 + n, 2), createHistory(plan));
    expect(short.past.map(({ label }) => label)).toEqual(['Ceiling 2003', 'Ceiling 2004']);
    expect(ceiling(undo(undo(undo(short))))).toBe(2002);
  });

  it('keeps the identity of what did not change', () => {
    expect(three.present.room.outline).toBe(plan.room.outline);
    expect(undo(three).present.machines).toBe(plan.machines);
  });
});
