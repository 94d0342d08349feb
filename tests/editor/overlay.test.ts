import { describe, expect, it } from 'vitest';
import { createEditor, drawOverlay, type EditorState, type Guide, handlesFor, type Readout, select } from '../../src/editor';
import { shapesOf } from '../../src/editor/hit/shapesOf';
import { edit, type Plan, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { nearly } from '../support/nearly';
import { at } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

const outlinesOf = (plan: Plan, id: string) => shapesOf(deriveScene(plan)).get(id)?.outlines ?? [];

const cart = withThing(emptyPlan());
const corners = [at(1600, 3250), at(2400, 3250), at(2400, 3750), at(1600, 3750)];

const stateOf = (plan: Plan, more: Partial<EditorState> = {}): EditorState => ({
  ...createEditor(plan, { width: 1000, height: 700 }),
  view: { scale: 0.2, dx: 0, dy: 0 },
  ...more,
});
const draw = (plan: Plan, more: Partial<EditorState> = {}) => drawOverlay(stateOf(plan, more), deriveScene(plan));
const preview = (more: {
  guides?: Guide[];
  readouts?: Readout[];
  box?: { from: { x: number; y: number }; to: { x: number; y: number } };
}) => ({
  preview: { plan: emptyPlan(), transaction: null, guides: [], readouts: [], box: null, ...more },
});
const kindsOf = (drawing: ReturnType<typeof draw>) => drawing.map((prim) => (prim.kind === 'symbol' ? prim.shape : prim.kind));

describe('what is chosen and what lies under the pointer', () => {
  it('chosen: a broad line and a light one on it; under the pointer: a thin one', () => {
    const line = (width: number, stroke: string) => ({ kind: 'line', layer: 'notes', points: corners, closed: true, stroke, width });
    expect(draw(cart, { hover: 'cart-1' })).toEqual(nearly([line(0.35, 'chosen')]));
    const two = withThing(cart, { id: 'cart-2', x: 5000 });
    expect(draw(two, { selection: ['cart-1', 'cart-2'] })).toHaveLength(4);
    expect(draw(two, { selection: ['cart-1', 'cart-2'] }).slice(0, 2)).toEqual(nearly([line(1.1, 'chosen'), line(0.5, 'paper')]));
    expect(draw(two, { selection: ['cart-1', 'cart-2'], hover: 'cart-1' })).toHaveLength(4);
    expect(draw(cart)).toEqual([]);
  });

  const plan = edit(withThing(straightPlan('direct-vent')), 'all', (draft) => {
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
    draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 200, waste: UNKNOWN_FLOOR_WASTE });
    draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
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
  }).plan;
  const about = (x: number, y: number, hx: number, hy: number) => [
    at(x - hx, y - hy),
    at(x + hx, y - hy),
    at(x + hx, y + hy),
    at(x - hx, y + hy),
  ];
  it.each([
    { id: 'machine', points: about(4000, 800, 368.5, 355.5), closed: true },
    { id: 'cart-1', points: corners, closed: true },
    { id: 'hood-1', points: about(6000, 3000, 500, 450), closed: true },
    { id: 'column-1', points: about(7000, 4000, 150, 100), closed: true },
    { id: 'stub-1', points: about(100, 110, 60, 60), closed: true },
    { id: 'wall-2', points: [at(8000, 0), at(8000, 5000)], closed: false },
    { id: 'door-1', points: [at(7000, 5000), at(6086, 5000)], closed: false },
  ])('$id', ({ id, points, closed }) => {
    const [found, ...more] = outlinesOf(plan, id);
    expect(more).toEqual([]);
    expect(found?.points.map(({ x, y }) => at(x, y))).toEqual(nearly(points));
    expect(found?.closed).toBe(closed);
  });

  it.each([
    { id: 'soiled-table', box: [731.5, 311, 3631.5, 1073] },
    { id: 'pre-rinse', box: [3631.5 - 2040, 800 - 255, 3631.5 - 1530, 800 + 255] },
    { id: 'drain-1', box: [4900, 2900, 5100, 3100] },
    { id: 'run', box: [4000, -694, 4000, 594.5], closed: false },
  ])('$id covers $box', ({ id, box, closed = true }) => {
    const [found, ...more] = outlinesOf(plan, id);
    expect(more).toEqual([]);
    const [xs, ys] = [found!.points.map(({ x }) => x), found!.points.map(({ y }) => y)];
    expect([Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]).toEqual(nearly(box));
    expect(found?.closed).toBe(closed);
  });

  it('nothing for what is not there', () => {
    expect(outlinesOf(plan, 'nobody')).toEqual([]);
  });
});

describe('handles', () => {
  const chosen = select(stateOf(cart), ['cart-1']);
  it('stand on the one that is chosen, the chosen handle filled', () => {
    const drawing = drawOverlay({ ...chosen, handle: 'right' }, deriveScene(cart)).slice(2);
    expect(drawing).toHaveLength(handlesFor(deriveScene(cart), 'cart-1', 0.2).length);
    expect(drawing[0]).toEqual(
      nearly({
        kind: 'symbol',
        layer: 'notes',
        at: at(1600, 3500),
        shape: 'square',
        size: 2.4,
        stroke: 'chosen',
        fill: 'paper',
        width: 0.4,
      }),
    );
    expect(drawing[1]).toMatchObject({ at: nearly(at(2400, 3500)), fill: 'chosen' });
    expect(drawing.at(-1)).toMatchObject({ shape: 'ring' });
  });

  it.each([
    {
      name: 'while several are chosen',
      plan: withThing(cart, { id: 'cart-2', x: 5000 }),
      more: { selection: ['cart-1', 'cart-2'] },
      left: 4,
    },
    { name: 'with another tool in hand', plan: cart, more: { selection: ['cart-1'], tool: { tool: 'measure', name: 'idle' } }, left: 2 },
    {
      name: 'while a frame is drawn',
      plan: cart,
      more: {
        selection: ['cart-1'],
        tool: { tool: 'select', name: 'boxing', last: null, press: { point: at(0, 0), screen: at(0, 0) }, keep: [] },
      },
      left: 2,
    },
    { name: 'while something is shown', plan: cart, more: { selection: ['cart-1'], ...preview({}) }, left: 2 },
  ] as { name: string; plan: Plan; more: Partial<EditorState>; left: number }[])('none $name', ({ plan, more, left }) => {
    expect(draw(plan, more)).toHaveLength(left);
  });
});

describe('guides', () => {
  const line = { kind: 'line', layer: 'notes', stroke: 'chosen' };
  it.each<{ name: string; guide: Guide; gives: object[] }>([
    {
      name: 'a caught line between two dots',
      guide: { kind: 'flush', from: at(0, 0), to: at(0, 500) },
      gives: [
        { ...line, points: [at(0, 0), at(0, 500)], width: 0.25, dash: 'long' },
        { kind: 'symbol', layer: 'notes', shape: 'dot', at: at(0, 0), size: 1.2, fill: 'chosen' },
        { kind: 'symbol', shape: 'dot', at: at(0, 500) },
      ],
    },
    {
      name: 'a joint',
      guide: { kind: 'joint', from: at(0, 0), to: at(0, 500) },
      gives: [{ ...line, points: [at(0, 0), at(0, 500)], width: 1, dash: 'solid' }],
    },
    {
      name: 'a caught point',
      guide: { kind: 'aligned', from: at(3, 4), to: at(3, 4.9) },
      gives: [{ kind: 'symbol', shape: 'dot', at: at(3, 4) }],
    },
    { name: 'a line of 1 mm', guide: { kind: 'aligned', from: at(3, 4), to: at(3, 5) }, gives: [line, { shape: 'dot' }, { shape: 'dot' }] },
  ])('$name', ({ guide, gives }) => {
    const drawing = draw(emptyPlan(), preview({ guides: [guide] }));
    expect(drawing).toHaveLength(gives.length);
    expect(drawing).toMatchObject(gives);
  });
});

describe('live dimensions', () => {
  const read = (readout: Readout, scale = 0.2) => draw(emptyPlan(), { ...preview({ readouts: [readout] }), view: { scale, dx: 0, dy: 0 } });
  it('a line between ticks with its number on the middle', () => {
    const drawing = read({ kind: 'length', from: at(0, 0), to: at(1524, 0), value: 1524 });
    expect(drawing).toMatchObject([
      { kind: 'line', points: [at(0, 0), at(1524, 0)], stroke: 'chosen', width: 0.25 },
      { kind: 'symbol', shape: 'tick', at: at(0, 0), size: 1.6, width: 0.35, angleDeg: 0 },
      { kind: 'symbol', shape: 'tick', at: at(1524, 0), angleDeg: 0 },
      {
        kind: 'text',
        at: at(762, 0),
        size: 3,
        angleDeg: 0,
        anchor: 'middle',
        baseline: 'middle',
        hue: 'chosen',
        weight: 'semibold',
        halo: true,
      },
    ]);
    expect(drawing[3]).toMatchObject({ text: expect.stringMatching(/^5′.0″$/) });
  });

  it('an angle stands at the end of its arm, upright', () => {
    const drawing = read({ kind: 'angle', from: at(0, 0), to: at(100, 100), value: 45 });
    expect(kindsOf(drawing)).toEqual(['line', 'text']);
    expect(drawing[1]).toMatchObject({ at: at(100, 100), angleDeg: 0, text: '45°' });
  });

  it.each([
    { length: 70, kinds: ['line', 'tick', 'tick', 'text'] },
    { length: 69.9, kinds: ['line'] },
  ])('$length mm, of 14 px or less: $kinds', ({ length, kinds }) => {
    expect(kindsOf(read({ kind: 'distance', from: at(0, 0), to: at(length, 0), value: length }))).toEqual(kinds);
  });

  it.each([
    { deg: 0, reads: 0 },
    { deg: 45, reads: 45 },
    { deg: 89, reads: 89 },
    { deg: 90, reads: -90 },
    { deg: 135, reads: -45 },
    { deg: 180, reads: 0 },
    { deg: 269, reads: 89 },
    { deg: 270, reads: -90 },
    { deg: 315, reads: -45 },
  ])('along $deg° reads at $reads°', ({ deg, reads }) => {
    const to = at(1000 * Math.cos((deg * Math.PI) / 180), 1000 * Math.sin((deg * Math.PI) / 180));
    expect(read({ kind: 'length', from: at(0, 0), to, value: 1000 })[3]).toMatchObject({ angleDeg: nearly(reads) });
  });
});

describe('a frame', () => {
  it('from corner to corner', () => {
    expect(draw(emptyPlan(), preview({ box: { from: at(10, 20), to: at(300, 400) } }))).toEqual([
      {
        kind: 'area',
        layer: 'notes',
        rings: [[at(10, 20), at(300, 20), at(300, 400), at(10, 400)]],
        stroke: 'chosen',
        width: 0.25,
        dash: 'short',
        fill: 'chosen',
        fillOpacity: 0.06,
      },
    ]);
  });
});
