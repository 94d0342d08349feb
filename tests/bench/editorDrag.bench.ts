import { createEditor, createPointerEvent, type EditorState, handle } from '../../src/editor';
import { createLinePlan, type Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import type { Benchmark } from './benchmark.ts';

/** A typical room: one line under its hood and twenty things around it. */
function typicalPlan(): Plan {
  const line = createLinePlan({
    family: 'recirculating-hot-water',
    configuration: 'straight',
    hand: 'left-to-right',
    at: { x: 4000, y: 800 },
  });
  const things = Array.from({ length: 20 }, (_, i) => ({
    id: `cart-${i + 1}`,
    kind: 'cart' as const,
    name: '',
    x: 500 + (i % 7) * 1000,
    y: 2600 + Math.floor(i / 7) * 700,
    rotationDeg: 0,
    width: 800,
    depth: 500,
    height: 900,
    ware: 'none' as const,
    clearBelow: null,
    sealed: null,
    basins: null,
  }));
  return { ...line, things };
}

const VIEW = { scale: 0.15, dx: 0, dy: 0 };

/** A drag under way; each run is one move more. The scene of the plan at its start is known, that of the preview is not asked for. */
function createMove(id: string, from: { x: number; y: number }): () => unknown {
  const plan = typicalPlan();
  deriveScene(plan);
  const under = [{ id, handle: null }];
  const at = (type: 'down' | 'move', x: number, y: number) =>
    createPointerEvent(VIEW, type, { x: x * VIEW.scale, y: y * VIEW.scale }, { under });
  let state: EditorState = { ...createEditor(plan, { width: 1400, height: 900 }), view: VIEW };
  state = handle(handle(state, at('down', from.x, from.y)), at('move', from.x + 100, from.y + 100));
  let count = 0;
  return () => {
    count += 1;
    state = handle(state, at('move', from.x + (count % 400) * 3, from.y + (count % 50) * 7));
    return state;
  };
}

/** One move of the pointer in a drag: the plan as it would be, what it snaps to and the live distances, without the scene. */
export const benchmarks: Benchmark[] = [
  { name: 'editor, one move of a machine with its line', unit: 'ms', target: 1, run: createMove('machine', { x: 4000, y: 800 }) },
  { name: 'editor, one move of a thing', unit: 'ms', target: 1, run: createMove('cart-1', { x: 500, y: 2600 }) },
];
