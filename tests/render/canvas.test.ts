import { describe, expect, it } from 'vitest';
import { drawPlan, type Prim } from '../../src/drawing';
import { type CanvasContext, type CanvasOptions, DAY, renderCanvas } from '../../src/render';
import { deriveScene } from '../../src/scene';
import { examplePlan } from '../support/examplePlans';

interface Call {
  name: string;
  args: unknown[];
  stroke: unknown;
  fill: unknown;
  width: number;
}

/** A context that writes down what is asked of it, with the state at that moment. */
function createRecorder(): { context: CanvasContext; calls: Call[] } {
  const calls: Call[] = [];
  const state: Record<string, unknown> = { strokeStyle: '', fillStyle: '', lineWidth: 1 };
  const context = new Proxy(state, {
    get: (target, key) =>
      typeof key === 'string' && key in target
        ? target[key]
        : (...args: unknown[]) => {
            calls.push({ name: String(key), args, stroke: state.strokeStyle, fill: state.fillStyle, width: Number(state.lineWidth) });
          },
  });
  return { context: context as unknown as CanvasContext, calls };
}

const VIEW: CanvasOptions = { scale: 0.1, dx: 100, dy: 50, pxPerPaperMm: 4, width: 800, height: 600 };

function paint(prims: readonly Prim[], view: Partial<CanvasOptions> = {}): Call[] {
  const { context, calls } = createRecorder();
  renderCanvas(context, prims, { ...VIEW, ...view });
  return calls;
}

const named = (calls: readonly Call[], name: string) => calls.filter((call) => call.name === name);
const LINE: Prim = {
  kind: 'line',
  layer: 'room',
  points: [
    { x: 0, y: 0 },
    { x: 1000, y: 500 },
  ],
  stroke: 'water',
  width: 0.5,
  dash: 'short',
};

describe('canvas', () => {
  it('geometry follows the view, ink keeps its size on paper', () => {
    const calls = paint([LINE]);
    expect(named(calls, 'moveTo')[0]?.args).toEqual([100, 50]);
    expect(named(calls, 'lineTo')[0]?.args).toEqual([200, 100]);
    expect(named(calls, 'stroke')[0]).toMatchObject({ stroke: DAY.water, width: 2 });
    expect(named(calls, 'setLineDash').at(-1)?.args[0]).toEqual([5.6, 3.2]);
  });

  it('hidden layers and what lies outside are not painted', () => {
    expect(named(paint([LINE], { hiddenLayers: new Set(['room']) }), 'stroke')).toHaveLength(0);
    expect(named(paint([LINE], { dx: 5000 }), 'stroke')).toHaveLength(0);
    expect(named(paint([LINE], { dx: 801 }), 'stroke')).toHaveLength(1);
  });

  it('a text is painted about its middle, turned, with its halo below', () => {
    const text: Prim = {
      kind: 'text',
      layer: 'notes',
      at: { x: 100, y: 100 },
      shift: { x: 2, y: 0 },
      text: '7′',
      size: 3,
      angleDeg: -90,
      anchor: 'middle',
      halo: true,
    };
    const calls = paint([text]);
    expect(named(calls, 'translate')[0]?.args).toEqual([118, 60]);
    expect(named(calls, 'rotate')[0]?.args[0]).toBeCloseTo(-Math.PI / 2, 9);
    expect(calls.map(({ name }) => name).filter((name) => name.endsWith('Text'))).toEqual(['strokeText', 'fillText']);
  });

  it('a symbol keeps its size while the drawing is zoomed', () => {
    const square: Prim = { kind: 'symbol', layer: 'findings', at: { x: 0, y: 0 }, shape: 'square', size: 10, fill: 'stop' };
    const widthAt = (scale: number) => {
      const xs = paint([square], { scale, dx: 300, dy: 300 })
        .filter(({ name }) => name === 'moveTo' || name === 'lineTo')
        .map(({ args }) => Number(args[0]));
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(widthAt(0.1)).toBeCloseTo(35.2, 6);
    expect(widthAt(1)).toBeCloseTo(35.2, 6);
  });

  it('hatches only what is seen', () => {
    const wall: Prim = {
      kind: 'area',
      layer: 'room',
      rings: [
        [
          { x: 0, y: 0 },
          { x: 1e6, y: 0 },
          { x: 1e6, y: 1e6 },
          { x: 0, y: 1e6 },
        ],
      ],
      fill: 'second',
      pattern: 'wall',
    };
    expect(named(paint([wall]), 'moveTo').length).toBeLessThan(600);
  });

  it('a pattern that was painted before follows the view', () => {
    const createWall = (pattern: 'wall' | 'dots'): Prim => ({
      kind: 'area',
      layer: 'room',
      rings: [
        [
          { x: 0, y: 0 },
          { x: 3000, y: 0 },
          { x: 3000, y: 2000 },
        ],
      ],
      fill: 'second',
      pattern,
    });
    for (const pattern of ['wall', 'dots'] as const) {
      const known = createWall(pattern);
      for (const view of [{}, { scale: 0.2 }, { dx: -200 }, { width: 300 }, {}]) {
        expect(paint([known], view)).toEqual(paint([createWall(pattern)], view));
      }
    }
  });

  it('a whole plan leaves the context as it was, and sets a style only when it changes', () => {
    const drawing = drawPlan(deriveScene(examplePlan('school-corner')), { units: 'us', scaleDenominator: 48 });
    const calls = paint(drawing, { scale: 0.08 });
    expect(calls[0]?.name === 'save' || named(calls, 'save').length === 1).toBe(true);
    expect(calls.at(-1)?.name).toBe('restore');
    expect(named(calls, 'setLineDash').length).toBeLessThan(named(calls, 'stroke').length / 2);
  });
});
