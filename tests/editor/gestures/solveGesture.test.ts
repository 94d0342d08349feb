import { describe, expect, it } from 'vitest';
import { createEditor } from '../../../src/editor';
import { aimOf, FREE_AIM } from '../../../src/editor/gestures/aim';
import type { Gesture } from '../../../src/editor/gestures/gesture';
import { pullGesture } from '../../../src/editor/gestures/pullGesture';
import { solveGesture } from '../../../src/editor/gestures/solveGesture';
import { edit, freeTable, type Plan } from '../../../src/plan';
import { at } from '../driver';
import { emptyPlan, straightPlan, withThing } from '../plans';
import { pull } from '../pulls';

const plan = withThing(straightPlan('direct-vent'));
const free = edit(plan, 'free', freeTable('soiled-table')).plan;

describe('what a drag does', () => {
  it.each<{ what: Parameters<typeof pull>[1]; of?: Plan; label: string }>([
    { what: { ids: ['machine'] }, label: 'Move machine' },
    { what: { ids: ['cart-1'] }, label: 'Move cart' },
    { what: { ids: ['wall-2'] }, label: 'Move wall 2' },
    { what: { ids: ['door-1'] }, of: emptyPlan(), label: 'Move door' },
    { what: { ids: ['scrap'] }, label: 'Move scrap opening' },
    { what: { ids: ['soiled-table'] }, label: 'Join soiled table' },
    { what: { ids: ['run'] }, label: 'Move duct run' },
    { what: { ids: ['cart-1', 'machine'] }, label: 'Move 2 things' },
    // A table that is joined stays with its machine, so only the cart moves.
    { what: { ids: ['soiled-table', 'cart-1'] }, label: 'Move cart' },
    { what: { ids: ['soiled-table', 'machine'] }, label: 'Move 2 things' },
    { what: { ids: ['soiled-table', 'clean-table'] }, label: 'Join soiled table' },
    { what: { ids: ['soiled-table', 'cart-1'] }, of: free, label: 'Move 2 things' },
    { what: { id: 'cart-1', handle: 'rotate' }, label: 'Turn cart' },
    { what: { id: 'cart-1', handle: 'right-back' }, label: 'Change size of cart' },
    { what: { id: 'wall-2', handle: 'corner-wall-3' }, label: 'Move corner' },
    { what: { id: 'run', handle: 'point-1' }, label: 'Move point of duct run' },
    { what: { id: 'run', handle: 'fan' }, label: 'Move fan' },
    { what: { id: 'soiled-table', handle: 'start' }, of: free, label: 'Change length of soiled table' },
    { what: { id: 'soiled-table', handle: 'leg-0' }, label: 'Change length of soiled table' },
    { what: { id: 'scrap', handle: 'from' }, label: 'Change length of scrap opening' },
    { what: { id: 'door-1', handle: 'to' }, of: emptyPlan(), label: 'Change width of door' },
  ])('$what: $label', ({ what, of = plan, label }) => {
    expect(pull(of, what, 5, 5).label).toBe(label);
  });

  it.each([
    { kind: 'move', ids: ['nobody'] },
    { kind: 'move', ids: [] },
    { kind: 'handle', id: 'nobody', handle: 'right' },
    { kind: 'handle', id: 'cart-1', handle: 'nowhere' },
    { kind: 'handle', id: 'nobody', handle: 'fan' },
    { kind: 'handle', id: 'nobody', handle: 'point-0' },
    { kind: 'handle', id: 'nobody', handle: 'start' },
    { kind: 'handle', id: 'nobody', handle: 'leg-0' },
    { kind: 'handle', id: 'nobody', handle: 'from' },
  ] as const)('$kind of $id $handle $ids is nothing', (what) => {
    const gesture = { ...what, start: plan, from: at(0, 0), to: at(5, 5), held: null } as Gesture;
    expect(solveGesture(gesture, FREE_AIM)).toBeNull();
  });
});

describe('a drag, one move on', () => {
  const room = withThing(emptyPlan());
  const gesture = { kind: 'move', ids: ['cart-1'], start: room, from: at(2000, 3500), to: at(2000, 3500), held: null } as const;

  it('shows the whole change from where it began', () => {
    const first = pullGesture(gesture, at(2500, 3500), FREE_AIM, null);
    const second = pullGesture(first.gesture, at(2600, 3400), FREE_AIM, first.preview);
    expect(second.gesture).toEqual({ ...gesture, to: at(2600, 3400) });
    expect(second.preview?.plan.things[0]).toMatchObject({ x: 2600, y: 3400 });
    expect(second.preview?.transaction?.label).toBe('Move cart');
    expect(second.preview?.transaction?.plan).toBe(second.preview?.plan);
    expect(second.preview).toMatchObject({ box: null, guides: [] });
    expect(second.preview?.readouts).toHaveLength(4);
    expect(room.things[0]).toMatchObject({ x: 2000, y: 3500 });
  });

  it('keeps the last sound preview where walls would cross', () => {
    const corner = {
      kind: 'handle',
      id: 'wall-1',
      handle: 'corner-wall-2',
      start: room,
      from: at(8000, 0),
      to: at(8000, 0),
      held: null,
    } as const;
    const sound = pullGesture(corner, at(7000, 500), FREE_AIM, null);
    const crossed = pullGesture(sound.gesture, at(7500, 7000), FREE_AIM, sound.preview);
    expect(crossed.preview).toBe(sound.preview);
    expect(crossed.gesture.to).toEqual(at(7500, 7000));
    expect(pullGesture({ ...gesture, ids: ['nobody'] }, at(1, 1), FREE_AIM, sound.preview).preview).toBe(sound.preview);
  });

  it('remembers the door that holds a table, and that it let go', () => {
    const held = { machine: 'machine', side: 'right', reversed: false } as const;
    const aim = { reach: 0, step: 0, isFree: false, isStraight: false };
    const table = { kind: 'move', ids: ['clean-table'], start: plan, from: at(0, 0), to: at(0, 0), held } as const;
    const near = pullGesture(table, at(200, 0), aim, null);
    expect(near.gesture.held).toEqual(held);
    const away = pullGesture(near.gesture, at(300, 0), aim, near.preview);
    expect(away.gesture.held).toBeNull();
    // Back at 200 mm: it was let go, and a door catches within 150 only.
    const back = pullGesture(away.gesture, at(200, 0), aim, away.preview);
    expect(back.gesture.held).toBeNull();
    expect(pullGesture(back.gesture, at(150, 0), aim, back.preview).gesture.held).toEqual(held);
  });
});

describe('the aim of a pointer', () => {
  const state = { ...createEditor(emptyPlan(), { width: 1000, height: 700 }), view: { scale: 0.2, dx: 0, dy: 0 } };
  it.each([
    {
      name: 'reaches half as far again as the pointer',
      tolerance: 30,
      alt: false,
      shift: false,
      gives: { reach: 45, step: 25.4, isFree: false, isStraight: false },
    },
    {
      name: 'at most 150 mm',
      tolerance: 100,
      alt: false,
      shift: false,
      gives: { reach: 150, step: 25.4, isFree: false, isStraight: false },
    },
    { name: 'short of that', tolerance: 99, alt: false, shift: true, gives: { reach: 148.5, step: 25.4, isFree: false, isStraight: true } },
    { name: 'free', tolerance: 30, alt: true, shift: false, gives: { reach: 0, step: 0, isFree: true, isStraight: false } },
    { name: 'free and straight', tolerance: 30, alt: true, shift: true, gives: { reach: 0, step: 0, isFree: true, isStraight: true } },
  ])('$name', ({ tolerance, alt, shift, gives }) => {
    expect(aimOf({ tolerance, alt, shift }, state)).toEqual(gives);
  });
});
