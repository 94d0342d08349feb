import { describe, expect, it } from 'vitest';
import { createEditor, createPointerEvent, cursorFor, type EditorState, type Hit, handle, handlesFor, select } from '../../src/editor';
import type { Point } from '../../src/geometry';
import { deriveScene } from '../../src/scene';
import { at } from './driver';
import { emptyPlan, withThing } from './plans';

/** A room with a cart from 1600 to 2400 across and from 3250 to 3750 down, and another one under it. */
const plan = withThing(withThing(emptyPlan(), { id: 'below', x: 2100, width: 900, depth: 400 }));
const SCALE = 0.2;

const editor = (...chosen: string[]): EditorState => ({
  ...select(createEditor(plan, { width: 1400, height: 900 }), chosen),
  view: { scale: SCALE, dx: 0, dy: 0 },
});

const item = (id: string): Hit => ({ id, handle: null });
const grip = (name: string, id = 'cart-1'): Hit => ({ id, handle: name });

/** Sends what the canvas says lies under the pointer, whatever there is at the place. */
function send(state: EditorState, type: 'down' | 'move' | 'up', under: Hit[], point: Point = at(2000, 3500), options = {}): EditorState {
  const screen = { x: point.x * SCALE, y: point.y * SCALE };
  return handle(state, createPointerEvent(state.view, type, screen, { under, ...options }));
}

const press = (state: EditorState, under: Hit[], point?: Point, options = {}) =>
  send(send(state, 'down', under, point, options), 'up', [], point, options);

const both = [item('cart-1'), item('below')];

describe('a press', () => {
  it.each([
    { name: 'takes what lies on top', chosen: [], under: both, shift: false, gives: ['cart-1'] },
    { name: 'on nothing lets go', chosen: ['below'], under: [], shift: false, gives: [] },
    { name: 'on what is chosen, though it lies below, stays with it', chosen: ['below'], under: both, shift: false, gives: ['below'] },
    { name: 'with shift adds', chosen: ['machine-9', 'below'], under: [item('cart-1')], shift: true, gives: ['below', 'cart-1'] },
    { name: 'with shift takes away what is chosen', chosen: ['below', 'cart-1'], under: [item('cart-1')], shift: true, gives: ['below'] },
    { name: 'with shift on nothing changes nothing', chosen: ['below'], under: [], shift: true, gives: ['below'] },
    { name: 'on a handle leaves the choice', chosen: ['cart-1'], under: [grip('right'), ...both], shift: false, gives: ['cart-1'] },
  ])('$name', ({ chosen, under, shift, gives }) => {
    expect(press(editor(...chosen), under, undefined, { shift }).selection).toEqual(gives);
  });

  it('again on the same place goes down to what lies below, and from there back to the top', () => {
    const states = [press(editor(), both)];
    for (let i = 0; i < 3; i++) states.push(press(states.at(-1) as EditorState, both));
    expect(states.map(({ selection }) => selection)).toEqual([['cart-1'], ['below'], ['cart-1'], ['below']]);
  });

  it('elsewhere on the same thing stays with it', () => {
    const once = press(press(editor(), both), both, at(2100, 3500));
    expect(press(once, both, at(2200, 3500)).selection).toEqual(['cart-1']);
  });

  it('takes no handle of what is not the one chosen thing', () => {
    const under = [grip('right'), item('cart-1')];
    expect(send(editor('below'), 'down', under).tool).toMatchObject({ name: 'pressed', id: 'cart-1', handle: null });
    expect(send(editor('below', 'cart-1'), 'down', under).tool).toMatchObject({ name: 'pressed', id: 'cart-1', handle: null });
    expect(send(editor('cart-1'), 'down', under).tool).toMatchObject({ name: 'pressed', id: 'cart-1', handle: 'right' });
  });

  it.each([
    { point: at(2395, 3510), handle: 'right' },
    { point: at(2395, 3690), handle: 'right-front' },
  ])('under a finger that covers several takes the handle that is nearest: $handle', ({ point, handle: nearest }) => {
    const under = [grip('right-front'), grip('right'), item('cart-1')];
    expect(send(editor('cart-1'), 'down', under, point).tool).toMatchObject({ handle: nearest });
  });

  it('with another button does nothing', () => {
    const state = editor();
    expect(send(state, 'down', both, undefined, { button: 2 })).toBe(state);
  });

  it('on a handle acts on it from then on; drawn away it sizes the thing', () => {
    const pressed = press(editor('cart-1'), [grip('right'), item('cart-1')], at(2400, 3500));
    expect(pressed.handle).toBe('right');
    const down = send(editor('cart-1'), 'down', [grip('right'), item('cart-1')], at(2400, 3500));
    const pulled = send(send(down, 'move', [], at(2500, 3500), { alt: true }), 'up', [], at(2500, 3500), { alt: true });
    expect(pulled.history.present.things.find(({ id }) => id === 'cart-1')?.width).toBeCloseTo(900, 6);
  });
});

describe('a pointer that rests', () => {
  it('marks what lies on top, and tells when it leaves it', () => {
    const over = send(editor(), 'move', [item('cart-1')]);
    expect([over.hover, cursorFor(over)]).toEqual(['cart-1', 'pointer']);
    expect(send(over, 'move', [item('cart-1')])).toBe(over);
    const away = send(over, 'move', []);
    expect([away.hover, cursorFor(away)]).toEqual([null, 'default']);
  });

  it.each(handlesFor(deriveScene(plan), 'cart-1', SCALE).map(({ id, cursor }) => ({ id, cursor })))(
    'on the handle $id shows how it moves: $cursor',
    ({ id, cursor }) => {
      const over = send(editor('cart-1'), 'move', [grip(id)]);
      expect([over.hover, over.hoverHandle, cursorFor(over)]).toEqual([null, id, cursor]);
    },
  );

  it('forgets the handle when the pointer leaves the paper, presses, or the plan changes', () => {
    const over = send(editor('cart-1'), 'move', [grip('left')]);
    expect(handle(over, { type: 'leave' }).hoverHandle).toBeNull();
    expect(handle(over, { type: 'cancel' }).hoverHandle).toBeNull();
    expect(send(over, 'down', [grip('left')]).hoverHandle).toBeNull();
  });
});
