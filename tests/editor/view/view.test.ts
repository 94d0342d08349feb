import { describe, expect, it } from 'vitest';
import {
  createEditor,
  createPointerEvent,
  cursorFor,
  fitPlan,
  fitView,
  handle,
  restoreSession,
  select,
  serializeSession,
  shownPlan,
  toPlan,
  toScreen,
  zoomAt,
} from '../../../src/editor';
import { planBounds } from '../../../src/editor/view/fitPlan';
import { panBy } from '../../../src/editor/view/view';
import { edit } from '../../../src/plan';
import { nearly } from '../../support/nearly';
import { at, Driver } from '../driver';
import { emptyPlan, straightPlan, withThing } from '../plans';

const view = { scale: 0.5, dx: 30, dy: -40 };
const keys = { shift: false, alt: false, ctrl: false };
const plan = emptyPlan();
const state = { ...createEditor(plan, { width: 1000, height: 700 }), view };

describe('plan and canvas', () => {
  it('from one to the other', () => {
    expect(toScreen(view, at(100, 200))).toEqual(at(80, 60));
    expect(toPlan(view, at(80, 60))).toEqual(at(100, 200));
    expect(panBy(view, 5, -7)).toEqual({ scale: 0.5, dx: 35, dy: -47 });
  });

  it.each([
    { factor: 2, gives: { scale: 1, dx: -40, dy: -180 } },
    { factor: 0.5, gives: { scale: 0.25, dx: 65, dy: 30 } },
    { factor: 1000, gives: { scale: 20, dx: -2700, dy: -5500 } },
    { factor: 0.0001, gives: { scale: 0.005, dx: 99.3, dy: 98.6 } },
  ])('zoom by $factor about (100, 100)', ({ factor, gives }) => {
    expect(zoomAt(view, at(100, 100), factor)).toEqual(nearly(gives));
  });

  it.each([
    {
      name: 'as wide as the canvas less its margins',
      bounds: [0, 0, 8320, 1000],
      viewport: [1000, 700],
      gives: { scale: 0.1, dx: 84, dy: 300 },
    },
    { name: 'as high as the canvas', bounds: [0, 0, 1000, 5320], viewport: [1000, 700], gives: { scale: 0.1, dx: 450, dy: 84 } },
    { name: 'away from the origin', bounds: [1000, 2000, 9320, 3000], viewport: [1000, 700], gives: { scale: 0.1, dx: -16, dy: 100 } },
    {
      name: 'with a quarter of a small canvas for margin',
      bounds: [0, 0, 1000, 100],
      viewport: [200, 300],
      gives: { scale: 0.1, dx: 50, dy: 145 },
    },
    {
      name: 'with a quarter of a flat canvas for margin',
      bounds: [0, 0, 100, 1000],
      viewport: [300, 200],
      gives: { scale: 0.1, dx: 145, dy: 50 },
    },
    { name: 'at most 20 px a millimetre', bounds: [0, 0, 1, 1], viewport: [1000, 700], gives: { scale: 20, dx: 490, dy: 340 } },
    {
      name: 'no smaller than it may be',
      bounds: [0, 0, 1_000_000, 1],
      viewport: [1000, 700],
      gives: { scale: 0.005, dx: -2000, dy: 349.9975 },
    },
    { name: 'a point', bounds: [5, 5, 5, 5], viewport: [1000, 700], gives: { scale: 20, dx: 400, dy: 250 } },
  ])('fits: $name', ({ bounds: [x0 = 0, y0 = 0, x1 = 0, y1 = 0], viewport: [width = 0, height = 0], gives }) => {
    expect(fitView({ min: at(x0, y0), max: at(x1, y1) }, { width, height })).toEqual(nearly(gives));
  });

  it.each([
    {
      name: 'a machine',
      change: (draft: typeof plan) => void (draft.machines = [{ ...straightPlan().machines[0]!, x: 9000, y: -100 }]),
      gives: [0, -100, 9000, 5000],
    },
    {
      name: 'a thing',
      change: (draft: typeof plan) => void (draft.things = [{ ...withThing(plan).things[0]!, x: -300, y: 6000 }]),
      gives: [-300, 0, 8000, 6000],
    },
    {
      name: 'a hood',
      change: (draft: typeof plan) => void (draft.hoods = [{ ...straightPlan().hoods[0]!, x: 8100, y: 5100 }]),
      gives: [0, 0, 8100, 5100],
    },
    {
      name: 'a run',
      change: (draft: typeof plan) =>
        void (draft.runs = [{ ...straightPlan('direct-vent').runs[0]!, points: [{ x: 4000, y: -700, z: 0 }] }]),
      gives: [0, -700, 8000, 5000],
    },
  ])('the whole plan holds $name outside of the room', ({ change, gives: [x0, y0, x1, y1] }) => {
    const draft: typeof plan = structuredClone(plan);
    change(draft);
    expect(planBounds(draft)).toEqual({ min: at(x0!, y0!), max: at(x1!, y1!) });
  });

  it('the plan fills the canvas, 126 px free for dimensions', () => {
    // (1000 − 252) ÷ 8000 and (700 − 252) ÷ 5000: the height decides.
    expect(fitPlan(state).view).toEqual(nearly({ scale: 0.0896, dx: 141.6, dy: 126 }));
  });
});

describe('an event from the canvas', () => {
  it.each([
    { pointer: 'mouse', tolerance: 12 },
    { pointer: 'pen', tolerance: 16 },
    { pointer: 'touch', tolerance: 36 },
  ] as const)('of a $pointer reaches $tolerance mm at this zoom', ({ pointer, tolerance }) => {
    expect(createPointerEvent(view, 'down', at(80, 60), { pointer, button: 2, shift: true })).toEqual({
      type: 'down',
      point: at(100, 200),
      screen: at(80, 60),
      tolerance,
      pointer,
      under: [],
      button: 2,
      shift: true,
      alt: false,
      ctrl: false,
    });
  });

  it('of nothing but a place is a mouse without keys, to a thousandth of a millimetre', () => {
    expect(createPointerEvent({ ...view, scale: 0.3 }, 'move', at(31, -39))).toMatchObject({
      point: at(3.333, 3.333),
      pointer: 'mouse',
      button: 0,
      shift: false,
    });
  });
});

describe('the wheel and fingers', () => {
  const wheel = (more: object) => handle(state, { type: 'wheel', screen: at(100, 100), deltaX: 0, deltaY: 0, ...keys, ...more }).view;
  it('enlarge about the pointer, by a sixth for 100 px', () => {
    expect(wheel({ deltaY: -100 })).toEqual(nearly(zoomAt(view, at(100, 100), Math.exp(0.15))));
    expect(wheel({ deltaY: -100 }).scale).toBeCloseTo(0.580917, 5);
    expect(wheel({ deltaY: 100 }).scale).toBeCloseTo(0.430354, 5);
  });

  it('with shift slide sideways', () => {
    expect(wheel({ deltaY: 40, shift: true })).toEqual({ scale: 0.5, dx: -10, dy: -40 });
    expect(wheel({ deltaX: 25, deltaY: 40, shift: true })).toEqual({ scale: 0.5, dx: 5, dy: -40 });
  });

  it('two fingers slide, then enlarge about their middle', () => {
    const after = handle(state, { type: 'pinch', screen: at(100, 100), factor: 2, dx: 10, dy: -20 }).view;
    expect(after).toEqual(nearly({ scale: 1, dx: -20, dy: -220 }));
  });
});

describe('another size of the canvas', () => {
  it('keeps the middle of a view', () => {
    expect(handle(state, { type: 'resize', width: 1200, height: 600 })).toMatchObject({
      view: { scale: 0.5, dx: 130, dy: -90 },
      viewport: { width: 1200, height: 600 },
    });
  });

  it('the same size is no change', () => {
    expect(handle(state, { type: 'resize', width: 1000, height: 700 })).toBe(state);
  });

  it.each([
    { name: 'scale', change: { scale: 0.1 } },
    { name: 'dx', change: { dx: 0 } },
    { name: 'dy', change: { dy: 0 } },
  ])('a view that differs in its $name does not fill the canvas', ({ change }) => {
    const fitted = createEditor(plan, { width: 1000, height: 700 });
    const moved = { ...fitted, view: { ...fitted.view, ...change } };
    expect(handle(moved, { type: 'resize', width: 1200, height: 700 }).view).toEqual(nearly({ ...moved.view, dx: moved.view.dx + 100 }));
    expect(handle(fitted, { type: 'resize', width: 1200, height: 700 }).view).toEqual(
      createEditor(plan, { width: 1200, height: 700 }).view,
    );
  });
});

describe('the middle and the second button', () => {
  it('slides the paper, up to its release', () => {
    const driver = new Driver(plan).down(at(1000, 1000), { button: 1 });
    expect(cursorFor(driver.state)).toBe('grabbing');
    driver.move(at(1500, 800), { button: 1 });
    expect(driver.state.view).toEqual(nearly({ scale: 0.2, dx: 100, dy: -40 }));
    driver.send('double', at(1500, 800));
    expect(driver.state.panning).not.toBeNull();
    driver.up(at(0, 0), { button: 1 });
    expect(driver.state.panning).toBeNull();
    expect(driver.state.view).toEqual(nearly({ scale: 0.2, dx: 100, dy: -40 }));
  });

  it('the second button does nothing', () => {
    const driver = new Driver(withThing(plan));
    const { state: before } = driver;
    expect(driver.down(at(2000, 3500), { button: 2 }).state).toBe(before);
  });

  it('a cancelled pointer lets go of the paper and of what lies under it', () => {
    const driver = new Driver(withThing(plan)).move(at(2000, 3500)).down(at(1000, 1000), { button: 1 }).cancel();
    expect(driver.state).toMatchObject({ panning: null, hover: null });
  });

  it.each([
    { hover: null, cursor: 'default' },
    { hover: 'cart-1', cursor: 'pointer' },
  ] as const)('over $hover the pointer is $cursor', ({ hover, cursor }) => {
    expect(cursorFor({ ...state, hover })).toBe(cursor);
  });
});

describe('keys of the view', () => {
  it.each([
    { key: '+', scale: 0.25 },
    { key: '=', scale: 0.25 },
    { key: '-', scale: 0.16 },
  ])('$key gives $scale px/mm about the middle', ({ key, scale }) => {
    const driver = new Driver(plan).key(key);
    expect(driver.state.view.scale).toBeCloseTo(scale, 9);
    expect(toPlan(driver.state.view, at(700, 450))).toEqual(nearly(at(3500, 2250)));
  });

  it('0 shows the whole plan; arrows slide the paper where nothing is chosen', () => {
    expect(new Driver(plan).key('0').state.view).toEqual(createEditor(plan, { width: 1400, height: 900 }).view);
    const slid = (key: string, shift = false) => {
      const { dx, dy } = new Driver(plan).key(key, { shift }).state.view;
      return at(dx + 0, dy + 0);
    };
    expect([slid('ArrowLeft'), slid('ArrowRight'), slid('ArrowUp'), slid('ArrowDown', true)]).toEqual([
      at(60, 0),
      at(-60, 0),
      at(0, 60),
      at(0, -60),
    ]);
  });
});

describe('kept work', () => {
  const chosen = select({ ...createEditor(withThing(plan), { width: 1000, height: 700 }), view }, ['cart-1']);
  const text = serializeSession(chosen);
  const changed = (change: (kept: Record<string, unknown>) => void) => {
    const kept = JSON.parse(text) as Record<string, unknown>;
    change(kept);
    return restoreSession(JSON.stringify(kept), { width: 1200, height: 600 });
  };
  const viewOf = (result: ReturnType<typeof restoreSession>) => (result.ok ? result.state.view : null);
  const fitted = createEditor(withThing(plan), { width: 1200, height: 600 }).view;

  it('comes back with its choice, its view about the same middle', () => {
    const result = restoreSession(text, { width: 1200, height: 600 });
    expect(result).toMatchObject({ ok: true, state: { selection: ['cart-1'], view: { scale: 0.5, dx: 130, dy: -90 } } });
    expect(result.ok && result.state.history.present).toEqual(withThing(plan));
    expect(result.ok && result.state.history.past).toEqual([]);
  });

  it.each([
    { name: 'no view', change: (kept: Record<string, unknown>) => void (kept['view'] = null) },
    { name: 'no canvas', change: (kept: Record<string, unknown>) => void delete kept['viewport'] },
    { name: 'a view of words', change: (kept: Record<string, unknown>) => void (kept['view'] = { scale: 'x', dx: 0, dy: 0 }) },
    { name: 'a view without dy', change: (kept: Record<string, unknown>) => void (kept['view'] = { scale: 1, dx: 0 }) },
    { name: 'a zoom too small', change: (kept: Record<string, unknown>) => void (kept['view'] = { scale: 0.0049, dx: 0, dy: 0 }) },
    { name: 'a zoom too large', change: (kept: Record<string, unknown>) => void (kept['view'] = { scale: 20.1, dx: 0, dy: 0 }) },
  ])('$name shows the whole plan', ({ change }) => {
    expect(viewOf(changed(change))).toEqual(fitted);
  });

  it.each([0.005, 20])('a zoom of %d is kept', (scale) => {
    expect(viewOf(changed((kept) => void (kept['view'] = { scale, dx: 0, dy: 0 })))?.scale).toBe(scale);
  });

  it.each([
    { name: 'what is no text of data', text: '{' },
    { name: 'a number', text: '5' },
    { name: 'null', text: 'null' },
    { name: 'another format', text: JSON.stringify({ ...JSON.parse(text), format: 'other' }) },
    { name: 'no plan', text: JSON.stringify({ ...JSON.parse(text), plan: 7 }) },
  ])('$name is no session', ({ text: broken }) => {
    expect(restoreSession(broken, { width: 1200, height: 600 })).toEqual({ ok: false, problem: 'It is not a session of this program.' });
  });

  it('a broken plan is refused; ids that are gone are not chosen', () => {
    const refused = changed((kept) => void (kept['plan'] = '{}'));
    expect(refused).toMatchObject({ ok: false, problem: expect.stringMatching(/\.$/) });
    const result = changed((kept) => void (kept['selection'] = ['cart-1', 'nobody', 5]));
    expect(result).toMatchObject({ ok: true, state: { selection: ['cart-1'] } });
    expect(changed((kept) => void (kept['selection'] = 'cart-1'))).toMatchObject({ ok: true, state: { selection: [] } });
  });

  it('the canvas shows the preview, else the plan', () => {
    expect(shownPlan(chosen)).toBe(chosen.history.present);
    const other = edit(plan, 'other', (draft) => void (draft.title.project = 'x')).plan;
    expect(shownPlan({ ...chosen, preview: { plan: other, transaction: null, guides: [], readouts: [], box: null } })).toBe(other);
  });
});
