import { describe, expect, it } from 'vitest';
import { createEditor, drawOverlay, findItem, handle, listItems, restoreSession, select, serializeSession } from '../../src/editor';
import { edit } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

const viewport = { width: 1000, height: 700 };

describe('the list beside the canvas', () => {
  const plan = edit(withThing(straightPlan('direct-vent')), 'all', (draft) => {
    draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 0, y: 0, z: 0 });
    draft.hoods.push({
      id: 'hood',
      x: 4000,
      y: 900,
      rotationDeg: 0,
      width: 1300,
      depth: 1300,
      lipHeight: 2000,
      height: 500,
      exhaust: null,
      cavityAir: null,
    });
  }).plan;
  const scene = deriveScene(plan);
  const groups = listItems(scene);

  it('has everything once, in its group', () => {
    const ids = groups.flatMap(({ items }) => items.flatMap(({ id, parts }) => [id, ...parts.map((part) => part.id)]));
    expect(new Set(ids).size).toBe(ids.length);
    expect(groups.map(({ group, items }) => [group, items.length])).toEqual([
      ['line', 3],
      ['things', 1],
      ['air', 2],
      ['room', 5],
    ]);
    expect(ids).toEqual(expect.arrayContaining(['machine', 'pre-rinse', 'cart-1', 'hood', 'run', 'stub-1', 'wall-4']));
  });

  it('goes by the marks of the drawing', () => {
    const marks = groups[0]!.items.map(({ mark }) => Number.parseFloat(mark ?? ''));
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
    expect(groups[0]!.items.every(({ id, mark }) => mark === scene.marks[id])).toBe(true);
  });

  it('names things as people do', () => {
    expect(findItem(scene, 'pre-rinse')).toMatchObject({ name: 'Pre-rinse sink', what: 'sink bowl' });
    expect(findItem(scene, 'soiled-table')).toMatchObject({ name: 'Soiled table' });
    expect(findItem(scene, 'wall-2')).toMatchObject({ name: 'Wall 2' });
    expect(findItem(scene, 'nobody')).toBeNull();
  });
});

describe('the session', () => {
  const state = { ...select(createEditor(straightPlan(), viewport), ['machine']), view: { scale: 0.3, dx: 12, dy: -7 } };

  it('comes back as it was: plan, choice, view', () => {
    const result = restoreSession(serializeSession(state), viewport);
    expect(result).toMatchObject({ ok: true, state: { selection: ['machine'], view: state.view } });
    expect(result.ok && result.state.history.present).toEqual(state.history.present);
  });

  it.each([
    { name: 'no JSON', text: '{', says: /not a session/ },
    { name: 'another JSON', text: '{"format":"something"}', says: /not a session/ },
    {
      name: 'a plan that is unsound',
      text: serializeSession(state).replace('\\"id\\": \\"machine\\"', '\\"id\\": \\"Machine!\\"'),
      says: /machines/,
    },
  ])('refuses $name', ({ text, says }) => {
    expect(restoreSession(text, viewport)).toEqual({ ok: false, problem: expect.stringMatching(says) });
  });

  it('leaves out a view and a choice that can’t be read', () => {
    const broken = JSON.stringify({
      ...(JSON.parse(serializeSession(state)) as object),
      view: { scale: -1 },
      selection: ['machine', 5, 'gone'],
    });
    const result = restoreSession(broken, viewport);
    expect(result).toMatchObject({ ok: true, state: { selection: ['machine'] } });
    expect(result.ok && result.state.view).toEqual(createEditor(straightPlan(), viewport).view);
  });
});

describe('the overlay', () => {
  it('draws a double outline and the handles of what is chosen', () => {
    const driver = new Driver(withThing(emptyPlan())).press(at(2000, 3500));
    const drawing = drawOverlay(driver.state, deriveScene(driver.plan));
    expect(drawing.filter(({ kind }) => kind === 'line')).toHaveLength(2);
    expect(drawing.filter(({ kind }) => kind === 'symbol').length).toBeGreaterThanOrEqual(9);
  });

  it('draws guides and live dimensions in the units that people read', () => {
    const plan = withThing(emptyPlan());
    const driver = new Driver(plan).down(at(2000, 3500)).move(at(420, 3000));
    const texts = drawOverlay(driver.state, deriveScene(driver.state.preview!.plan)).flatMap((prim) =>
      prim.kind === 'text' ? [prim.text] : [],
    );
    expect(texts.some((text) => text.includes('″'))).toBe(true);
    const metric = handle(select(createEditor({ ...plan, settings: { ...plan.settings, units: 'metric' } }, viewport), []), {
      type: 'cancel',
    });
    expect(metric.preview).toBeNull();
  });
});
