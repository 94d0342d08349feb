import { describe, expect, it } from 'vitest';
import { commit, copySelection, type EditorState, openPlan, pasteClip, select, undo, wantsKey } from '../../src/editor';
import { edit, type Plan, parsePlan, renderPlanText } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { cornerPlan, emptyPlan, straightPlan, withThing } from './plans';

const chosen = (plan: Plan, ids: string[], scale?: number) => {
  const driver = new Driver(plan, scale);
  driver.state = select(driver.state, ids);
  return driver;
};
const key = (name: string, modifiers = {}) => ({ type: 'key', key: name, shift: false, alt: false, ctrl: false, ...modifiers }) as const;
const cart = (plan: Plan) => plan.things[0]!;
const metric = (plan: Plan): Plan => ({ ...plan, settings: { ...plan.settings, units: 'metric' } });

describe('arrows', () => {
  const room = withThing(emptyPlan());
  it.each([
    { name: 'ArrowRight', plan: room, scale: 0.2, by: [25.4, 0] },
    { name: 'ArrowUp', plan: room, scale: 0.2, by: [0, -25.4] },
    { name: 'ArrowLeft', plan: room, scale: 1, by: [-12.7, 0] },
    { name: 'ArrowDown', plan: room, scale: 4, by: [0, 3.175] },
    { name: 'ArrowRight', plan: metric(room), scale: 0.2, by: [10, 0] },
    { name: 'ArrowRight', plan: metric(room), scale: 4, by: [1, 0] },
    { name: 'ArrowRight', plan: metric(room), scale: 0.2, by: [100, 0], shift: true },
  ])('$name at $scale px/mm moves by $by', ({ name, plan, scale, by, shift = false }) => {
    const driver = chosen(plan, ['cart-1'], scale).key(name, { shift });
    expect(cart(driver.plan).x).toBeCloseTo(2000 + by[0]!, 9);
    expect(cart(driver.plan).y).toBeCloseTo(3500 + by[1]!, 9);
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
  });

  it('move several things together', () => {
    const driver = chosen(withThing(room, { id: 'cart-2', x: 5000 }), ['cart-1', 'cart-2']).key('ArrowRight');
    expect(driver.plan.things.map(({ x }) => x)).toEqual([expect.closeTo(2025.4, 9), expect.closeTo(5025.4, 9)]);
    expect(driver.labels).toEqual(['Move 2 things']);
  });

  it('move an opening along its wall, a fitting along its table, a wall straight in', () => {
    expect(chosen(emptyPlan(), ['door-1']).key('ArrowRight').plan.room.openings[0]?.from).toBeCloseTo(1000 - 25.4, 6);
    const sink = (plan: Plan) => plan.tables[0]?.fittings.find(({ id }) => id === 'pre-rinse')?.at ?? 0;
    const before = sink(straightPlan());
    expect(sink(chosen(straightPlan(), ['pre-rinse']).key('ArrowLeft').plan)).toBeCloseTo(before + 25.4, 6);
    expect(chosen(emptyPlan(), ['wall-1']).key('ArrowDown').plan.room.outline[0]?.y).toBeCloseTo(25.4, 6);
  });

  it('move the chosen handle: a point of a run', () => {
    const driver = chosen(straightPlan('direct-vent'), ['run']);
    driver.state = { ...driver.state, handle: 'point-1' };
    const before = driver.plan.runs[0]!.points[1]!;
    expect(driver.key('ArrowRight').plan.runs[0]!.points[1]!.x).toBeCloseTo(before.x + 25.4, 6);
    expect(driver.state.handle).toBe('point-1');
  });

  it('a joined table stays at its machine, and says why', () => {
    const driver = chosen(straightPlan(), ['soiled-table']).key('ArrowRight');
    expect(driver.labels).toEqual([]);
    expect(driver.state.message).toMatchObject({ tone: 'refused', text: expect.stringContaining('joined') });
  });

  it('slide the paper while nothing is chosen', () => {
    expect(new Driver(emptyPlan()).key('ArrowRight').state.view.dx).toBe(-60);
  });
});

describe('removing', () => {
  it.each([
    { name: 'a thing', plan: withThing(emptyPlan()), id: 'cart-1', gone: (plan: Plan) => plan.things.length === 0 },
    { name: 'a fitting', plan: straightPlan(), id: 'scrap', gone: (plan: Plan) => plan.tables[0]?.fittings.length === 3 },
    {
      name: 'a machine; its tables stay free',
      plan: straightPlan(),
      id: 'machine',
      gone: (plan: Plan) => plan.tables.every(({ place }) => place.kind === 'free'),
    },
    { name: 'a run with its machine', plan: straightPlan('direct-vent'), id: 'machine', gone: (plan: Plan) => plan.runs.length === 0 },
    { name: 'a door', plan: emptyPlan(), id: 'door-1', gone: (plan: Plan) => plan.room.openings.length === 0 },
  ])('$name', ({ plan, id, gone }) => {
    const driver = chosen(plan, [id]).key('Delete');
    expect(gone(driver.plan)).toBe(true);
    expect(driver.state.selection).toEqual([]);
    expect(parsePlan(renderPlanText(driver.plan)).ok).toBe(true);
    expect(driver.key('z', { ctrl: true }).plan).toEqual(plan);
  });

  it('a wall is refused; its chosen corner goes', () => {
    const plan = edit(emptyPlan(), 'notch', (draft) => draft.room.outline.splice(1, 0, { id: 'wall-5', x: 4000, y: 100 })).plan;
    const driver = chosen(plan, ['wall-5']).key('Delete');
    expect(driver.state.message?.tone).toBe('refused');
    driver.state = { ...driver.state, handle: 'corner-wall-5' };
    expect(driver.key('Backspace').plan.room.outline).toHaveLength(4);
  });

  it('the chosen point of a run goes', () => {
    const driver = chosen(straightPlan('direct-vent'), ['run']);
    driver.state = { ...driver.state, handle: 'point-0' };
    expect(driver.key('Delete').plan.runs[0]?.points).toHaveLength(1);
  });
});

describe('copy, cut, paste, duplicate', () => {
  it('a copy lands beside, each further one a step on, chosen', () => {
    const driver = chosen(withThing(emptyPlan()), ['cart-1']).key('c', { ctrl: true }).key('v', { ctrl: true }).key('v', { ctrl: true });
    expect(driver.plan.things.map(({ x }) => x)).toEqual([2000, 2305, 2610]);
    expect(driver.state.selection).toEqual([driver.plan.things[2]?.id]);
    expect(driver.labels).toEqual(['Paste', 'Paste']);
  });

  it('cut takes it away and pasting brings it back', () => {
    const driver = chosen(withThing(emptyPlan()), ['cart-1']).key('x', { ctrl: true });
    expect(driver.plan.things).toEqual([]);
    expect(driver.key('v', { ctrl: true }).plan.things).toHaveLength(1);
  });

  it('a machine copied with its tables keeps its joints; a table alone becomes free', () => {
    const both = chosen(cornerPlan(), ['machine', 'soiled-table', 'clean-table']).key('c', { ctrl: true }).key('v', { ctrl: true });
    const joints = deriveScene(both.plan).joints.filter(({ machine }) => machine !== 'machine');
    expect(joints).toHaveLength(2);
    expect(joints.every(({ gap }) => Math.abs(gap) < 1e-6)).toBe(true);
    const alone = chosen(cornerPlan(), ['soiled-table']).key('d', { ctrl: true });
    expect(alone.plan.tables[2]?.place.kind).toBe('free');
  });

  it('goes over into another plan, with the data sheet that it needs', () => {
    const own = edit(straightPlan(), 'own', (draft) => {
      const sheet = JSON.parse(JSON.stringify(deriveScene(straightPlan()).machines[0]?.sheet)) as Plan['sheets'][number];
      draft.sheets.push({ ...sheet, id: 'own-sheet' });
      draft.machines[0]!.sheet = 'own-sheet';
    }).plan;
    const copied = copySelection(select(new Driver(own).state, ['machine', 'soiled-table']));
    const pasted = pasteClip(openPlan(copied, emptyPlan()));
    expect(pasted.history.present.sheets.map(({ id }) => id)).toEqual(['own-sheet']);
    expect(pasted.history.present.tables[0]?.place).toMatchObject({ kind: 'joined', machine: pasted.history.present.machines[0]?.id });
    expect(parsePlan(renderPlanText(pasted.history.present)).ok).toBe(true);
  });

  it('a door goes beside itself; where there is no room, it says so', () => {
    const driver = chosen(emptyPlan(), ['door-1']).key('c', { ctrl: true }).key('v', { ctrl: true });
    expect(driver.plan.room.openings[1]?.from).toBe(1914);
    driver.key('v', { ctrl: true });
    expect(driver.state.message?.tone).toBe('refused');
    expect(driver.plan.room.openings).toHaveLength(2);
  });
});

describe('choosing by key', () => {
  it('Tab goes along the line from drop-off to storage, then on; past the end it is not wanted', () => {
    const driver = new Driver(straightPlan());
    const seen: (string | undefined)[] = [];
    for (let i = 0; i < 6; i += 1) seen.push(driver.key('Tab').state.selection[0]);
    expect(seen).toEqual(['drop-off', 'scrap', 'pre-rinse', 'soiled-landing', 'machine', 'clean-landing']);
    expect(driver.key('Tab', { shift: true }).state.selection).toEqual(['machine']);
    const last = select(driver.state, ['wall-4']);
    expect(wantsKey(last, key('Tab'))).toBe(false);
  });

  it('Escape lets go of the handle, then of the choice, then is not wanted', () => {
    const driver = chosen(emptyPlan(), ['wall-1']);
    driver.state = { ...driver.state, handle: 'corner-wall-1' };
    expect(driver.key('Escape').state).toMatchObject({ handle: null, selection: ['wall-1'] });
    expect(driver.key('Escape').state.selection).toEqual([]);
    expect(wantsKey(driver.state, key('Escape'))).toBe(false);
  });

  it('all but the walls with ctrl A', () => {
    expect(new Driver(withThing(straightPlan())).key('a', { ctrl: true }).state.selection.toSorted()).toEqual(
      ['cart-1', 'clean-table', 'hood', 'machine', 'soiled-table'].toSorted(),
    );
  });
});

describe('keys that are left to the browser', () => {
  const state: EditorState = new Driver(emptyPlan()).state;
  it.each(['q', 'F5', 'Enter', 'Delete', 'r'])('%s with nothing chosen', (name) => {
    expect(wantsKey(state, key(name))).toBe(false);
  });
  it.each([
    ['l', { ctrl: true }],
    ['ArrowLeft', { alt: true }],
    ['z', { ctrl: true }],
  ] as const)('%s with %o', (name, modifiers) => {
    expect(wantsKey(state, key(name, modifiers))).toBe(false);
  });
});

describe('a change from elsewhere in the middle of a drag', () => {
  it('drops the drag, so that undo stays whole', () => {
    const plan = withThing(emptyPlan());
    const driver = new Driver(plan).down(at(2000, 3500)).move(at(3000, 3000));
    driver.state = commit(
      driver.state,
      edit(plan, 'Name', (draft) => void (draft.title.project = 'Alder')),
    );
    expect(driver.state).toMatchObject({ preview: null, tool: { name: 'idle' } });
    driver.up(at(3000, 3000));
    expect(driver.labels).toEqual(['Name']);
    expect(undo(driver.state).history.present).toEqual(plan);
  });
});
