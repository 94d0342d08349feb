import { describe, expect, it } from 'vitest';
import { clearPanels, type Ink } from '../../../src/app/store/clearPanels';

const viewport = { width: 1000, height: 600 };
const VIEW = { scale: 1, dx: 0, dy: 0 };

/** A drawing that is one block of ink, plan mm; it keeps its size at each scale. */
const block = (minX: number, minY: number, maxX: number, maxY: number) => (): Ink => ({
  bounds: { minX, minY, maxX, maxY },
  boxes: [
    {
      centre: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
      d: { x: 1, y: 0 },
      halfLength: (maxX - minX) / 2,
      halfHeight: (maxY - minY) / 2,
    },
  ],
});

const corner = { left: 0, top: 0, width: 100, height: 50 };

describe('a view clear of the panels', () => {
  it('stays as it is where nothing is covered', () => {
    expect(clearPanels(VIEW, viewport, [corner], 10, block(200, 100, 800, 500))).toEqual(VIEW);
    expect(clearPanels(VIEW, viewport, [], 10, block(0, 0, 1000, 600))).toEqual(VIEW);
  });

  it('slides as little as will do', () => {
    const view = clearPanels(VIEW, viewport, [corner], 10, block(20, 20, 600, 300));
    expect(view.scale).toBe(1);
    // Down by 30 or to the right by 80 would do; the steps are 24.2 and 31.7 px of the free paper.
    expect(view.dx === 0 || view.dy === 0).toBe(true);
    expect(view.dy).toBeGreaterThanOrEqual(30);
    expect(view.dy).toBeLessThan(60);
  });

  it('measures a panel from the side that it keeps to', () => {
    const opposite = { right: 0, bottom: 0, width: 100, height: 50 };
    const view = clearPanels(VIEW, viewport, [opposite], 10, block(400, 300, 980, 580));
    expect(view.dx < 0 || view.dy < 0).toBe(true);
    expect(clearPanels(VIEW, viewport, [opposite], 10, block(20, 20, 600, 300))).toEqual(VIEW);
  });

  it('shrinks where sliding does not help, and keeps the drawing in the middle then', () => {
    const view = clearPanels(VIEW, viewport, [corner], 10, block(10, 10, 990, 590));
    expect(view.scale).toBeLessThan(1);
    expect(view.scale).toBeGreaterThan(0.7);
    expect(view.dy + 10 * view.scale >= 50 || view.dx + 10 * view.scale >= 100).toBe(true);
  });

  it('stays where nothing helps, or nothing is drawn', () => {
    const all = { left: 0, top: 0, width: 1000, height: 600 };
    expect(clearPanels(VIEW, viewport, [all], 10, block(200, 100, 800, 500))).toBe(VIEW);
    expect(clearPanels(VIEW, viewport, [corner], 10, () => null)).toBe(VIEW);
  });
});
