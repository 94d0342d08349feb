import { describe, expect, it } from 'vitest';
import { createEditor, fitView, handle, toPlan, toScreen, zoomAt } from '../../src/editor';
import { emptyPlan } from './plans';

const view = { scale: 0.2, dx: 30, dy: -40 };
const keys = { shift: false, alt: false, ctrl: false };

describe('zoom', () => {
  it.each([0.5, 1.25, 4, 1e9, 1e-9])('by %d keeps the place under the pointer', (factor) => {
    const screen = { x: 700, y: 320 };
    const before = toPlan(view, screen);
    const after = toPlan(zoomAt(view, screen, factor), screen);
    expect(after.x).toBeCloseTo(before.x, 6);
    expect(after.y).toBeCloseTo(before.y, 6);
  });

  it('stops at its limits', () => {
    expect(zoomAt(view, { x: 0, y: 0 }, 1e9).scale).toBe(20);
    expect(zoomAt(view, { x: 0, y: 0 }, 1e-9).scale).toBe(0.005);
  });

  it('there and back is where it was', () => {
    const screen = { x: 100, y: 500 };
    expect(toScreen(zoomAt(zoomAt(view, screen, 2), screen, 0.5), { x: 1234, y: 567 })).toEqual(toScreen(view, { x: 1234, y: 567 }));
  });

  it('the whole plan fits, in the middle', () => {
    const fitted = fitView({ min: { x: 0, y: 0 }, max: { x: 8000, y: 5000 } }, { width: 1000, height: 700 });
    expect(toScreen(fitted, { x: 4000, y: 2500 })).toEqual({ x: 500, y: 350 });
    expect(toScreen(fitted, { x: 0, y: 0 }).x).toBeCloseTo(84);
  });
});

describe('events of the view', () => {
  const state = createEditor(emptyPlan(), { width: 1000, height: 700 });

  it('the wheel enlarges about the pointer', () => {
    const screen = { x: 250, y: 250 };
    const after = handle(state, { type: 'wheel', screen, deltaX: 0, deltaY: -200, ...keys });
    expect(after.view.scale).toBeGreaterThan(state.view.scale);
    expect(toPlan(after.view, screen).x).toBeCloseTo(toPlan(state.view, screen).x, 6);
  });

  it('two fingers enlarge and slide at once', () => {
    const after = handle(state, { type: 'pinch', screen: { x: 500, y: 350 }, factor: 2, dx: 10, dy: 0 });
    expect(after.view.scale).toBeCloseTo(state.view.scale * 2);
    expect(toScreen(after.view, toPlan(state.view, { x: 490, y: 350 }))).toEqual({ x: expect.closeTo(500, 6), y: expect.closeTo(350, 6) });
  });

  it('a plan that filled the canvas fills it again after a resize; another view keeps its middle', () => {
    const grown = handle(state, { type: 'resize', width: 1400, height: 900 });
    expect(grown.view).toEqual(createEditor(emptyPlan(), { width: 1400, height: 900 }).view);
    const moved = handle({ ...state, view }, { type: 'resize', width: 1400, height: 900 });
    expect(toPlan(moved.view, { x: 700, y: 450 })).toEqual(toPlan(view, { x: 500, y: 350 }));
  });
});
