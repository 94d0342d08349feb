import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chooseTool,
  createEditor,
  createPointerEvent,
  type EditorEvent,
  type EditorState,
  handle,
  nudgeSelection,
  redo,
  select,
  type ToolChoice,
  undo,
} from '../../src/editor';
import { type Plan, parsePlan, renderPlanText, validatePlan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { cornerPlan, emptyPlan, straightPlan, withThing } from './plans';

const RUNS = { numRuns: 100, seed: 20_261 };

/** Laws run many sequences; a busy machine may need longer than the usual 5 s. */
const TIMEOUT = 60_000;
const VIEW = { scale: 0.15, dx: 60, dy: 60 };

const PLANS: readonly Plan[] = [withThing(straightPlan()), cornerPlan(), straightPlan('direct-vent'), withThing(emptyPlan())];

const CHOICES: readonly ToolChoice[] = [
  { tool: 'select' },
  { tool: 'move-wall' },
  { tool: 'draw-room' },
  { tool: 'add-opening', kind: 'pass-window' },
  { tool: 'add-table', role: 'clean' },
  { tool: 'add-thing', add: { kind: 'thing', thing: 'hand-sink' } },
  { tool: 'add-thing', add: { kind: 'stub', stub: 'cold-water' } },
  { tool: 'place-machine', sheet: 'heat-recovery' },
  { tool: 'draw-run' },
  { tool: 'add-hood' },
  { tool: 'measure' },
];

const KEYS = ['Escape', 'Delete', 'Enter', 'Tab', 'r', 'ArrowLeft', 'ArrowDown', 'PageUp', '4', 'Backspace'];
const CTRL_KEYS = ['z', 'y', 'c', 'v', 'x', 'd', 'a'];

type Act = { kind: 'tool'; choice: ToolChoice } | { kind: 'event'; make: (state: EditorState) => EditorEvent };

/** Places where something is to be caught: the machine, tables and their ends, the hood's edge, walls, corners, the cart, the run, the door. */
const SPOTS = [
  [4000, 800],
  [5000, 800],
  [2000, 3500],
  [3100, 800],
  [1100, 800],
  [5900, 800],
  [5000, 2700],
  [4000, 1470],
  [5000, 1470],
  [0, 2500],
  [4000, 5000],
  [8000, 0],
  [8000, 5000],
  [6543, 5000],
  [4000, -300],
  [2400, 3750],
  [2000, 3880],
].map(([x = 0, y = 0]) => ({ x, y }));

const anywhere = fc.record({ x: fc.integer({ min: -200, max: 8200 }), y: fc.integer({ min: -200, max: 5200 }) });
const nearSpot = fc
  .tuple(fc.constantFrom(...SPOTS), fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
  .map(([{ x, y }, dx, dy]) => ({ x: x + dx, y: y + dy }));
const point = fc.oneof(nearSpot, anywhere);
const modifiers = fc.record({
  shift: fc.boolean(),
  alt: fc.boolean(),
  ctrl: fc.constant(false),
  pointer: fc.constantFrom('mouse' as const, 'mouse' as const, 'touch' as const),
});

type Held = { shift: boolean; alt: boolean; ctrl: boolean; pointer: 'mouse' | 'touch' };
type Place = { x: number; y: number };

const pointerAct = (type: 'down' | 'move' | 'up' | 'double', at: Place, held: Held): Act => ({
  kind: 'event',
  make: ({ view }) => createPointerEvent(view, type, { x: at.x * view.scale + view.dx, y: at.y * view.scale + view.dy }, held),
});

const press = fc.tuple(point, modifiers).map(([at, held]) => [pointerAct('down', at, held), pointerAct('up', at, held)]);
const drag = fc
  .tuple(nearSpot, fc.array(point, { minLength: 1, maxLength: 3 }), modifiers)
  .map(([from, way, held]) => [
    pointerAct('down', from, held),
    ...way.map((at) => pointerAct('move', at, held)),
    pointerAct('up', way.at(-1) ?? from, held),
  ]);
/** Choosing first, then dragging what was chosen, as walls and fingers ask. */
const pressAndDrag = fc.tuple(press, drag).map((two) => two.flat());
const loose = fc
  .tuple(fc.constantFrom('down' as const, 'move' as const, 'up' as const, 'double' as const), point, modifiers)
  .map(([type, at, held]) => [pointerAct(type, at, held)]);
const key = fc
  .oneof(
    fc.record({ key: fc.constantFrom(...KEYS), shift: fc.boolean(), ctrl: fc.constant(false) }),
    fc.record({ key: fc.constantFrom(...CTRL_KEYS), shift: fc.boolean(), ctrl: fc.constant(true) }),
  )
  .map((typed): Act[] => [{ kind: 'event', make: () => ({ type: 'key', alt: false, ...typed }) }]);
const choice = fc.constantFrom(...CHOICES).map((tool): Act[] => [{ kind: 'tool', choice: tool }]);
const useTool = fc.tuple(choice, fc.oneof(press, drag), fc.oneof(press, key), fc.oneof(key, press)).map((parts) => parts.flat());
const acts = fc
  .array(fc.oneof(press, drag, drag, pressAndDrag, loose, key, useTool), { minLength: 3, maxLength: 12, size: 'max' })
  .map((parts) => parts.flat());
const plans = fc.constantFrom(...PLANS);

const start = (plan: Plan): EditorState => ({ ...createEditor(freeze(plan), { width: 1300, height: 900 }), view: VIEW });

const act = (state: EditorState, one: Act): EditorState =>
  one.kind === 'tool' ? chooseTool(state, one.choice) : handle(state, one.make(state));

/** So that any change in place throws. */
function freeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.values(value).forEach(freeze);
  return Object.freeze(value);
}

describe('whatever a person does', () => {
  it(
    'the plan stays sound and can be read back; what is chosen is there',
    () => {
      fc.assert(
        fc.property(plans, acts, (plan, sequence) => {
          const end = sequence.reduce(act, start(plan));
          expect(validatePlan(end.history.present)).toBeNull();
          const read = parsePlan(renderPlanText(end.history.present));
          expect(read).toMatchObject({ ok: true });
          expect(read.ok && read.plan).toEqual(end.history.present);
          const text = JSON.stringify(end.history.present);
          for (const id of end.selection) expect(text).toContain(`"id":"${id}"`);
        }),
        RUNS,
      );
    },
    TIMEOUT,
  );

  it(
    'undoing all of it gives the plan that it began with, and redoing all of it the plan that it ended with',
    () => {
      fc.assert(
        fc.property(plans, acts, (plan, sequence) => {
          const end = chooseTool(sequence.reduce(act, start(plan)), { tool: 'select' });
          let back = end;
          while (back.history.past.length > 0) back = undo(back);
          expect(back.history.present).toEqual(plan);
          let again = back;
          while (again.history.past.length < end.history.past.length) again = redo(again);
          expect(again.history.present).toEqual(end.history.present);
        }),
        RUNS,
      );
    },
    TIMEOUT,
  );

  it(
    'cancelling leaves the very plan that is there, and nothing shown beside it',
    () => {
      fc.assert(
        fc.property(plans, acts, (plan, sequence) => {
          const before = sequence.reduce(act, start(plan));
          const after = handle(before, { type: 'cancel' });
          expect(after.history).toBe(before.history);
          expect(after.preview?.transaction ?? null).toBeNull();
        }),
        RUNS,
      );
    },
    TIMEOUT,
  );

  it(
    'a move of the pointer alone changes no plan',
    () => {
      fc.assert(
        fc.property(plans, acts, anywhere, (plan, sequence, at) => {
          const before = sequence.reduce(act, start(plan));
          const screen = { x: at.x * before.view.scale + before.view.dx, y: at.y * before.view.scale + before.view.dy };
          expect(handle(before, createPointerEvent(before.view, 'move', screen)).history).toBe(before.history);
        }),
        RUNS,
      );
    },
    TIMEOUT,
  );
});

describe('a machine that is moved and turned', () => {
  const motion = fc.record({
    to: anywhere,
    turns: fc.integer({ min: 0, max: 5 }),
    by: fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) }),
  });
  it(
    'keeps its tables flush',
    () => {
      fc.assert(
        fc.property(fc.constantFrom(straightPlan(), cornerPlan(), straightPlan('direct-vent')), motion, (plan, { to, turns, by }) => {
          const [machine] = plan.machines;
          const screen = (p: { x: number; y: number }) => ({ x: p.x * VIEW.scale + VIEW.dx, y: p.y * VIEW.scale + VIEW.dy });
          let state = start(plan);
          for (const [type, at] of [
            ['down', machine!],
            ['move', to],
            ['up', to],
          ] as const)
            state = handle(state, createPointerEvent(VIEW, type, screen(at)));
          for (let i = 0; i < turns; i += 1) state = handle(state, { type: 'key', key: 'r', shift: false, alt: false, ctrl: false });
          state = nudgeSelection(select(state, ['machine']), by);
          for (const { gap, offset, angleDeg } of deriveScene(state.history.present).joints) {
            expect(Math.abs(gap)).toBeLessThan(1e-6);
            expect(Math.abs(offset)).toBeLessThan(1e-6);
            expect(Math.abs(angleDeg)).toBeLessThan(1e-6);
          }
        }),
        { ...RUNS, numRuns: 60 },
      );
    },
    TIMEOUT,
  );
});

describe('a nudge', () => {
  it(
    'there and back is where it was, and undo gives the plan itself',
    () => {
      fc.assert(
        fc.property(plans, fc.constantFrom('Left', 'Right', 'Up', 'Down'), fc.boolean(), (plan, direction, shift) => {
          const id = plan.things[0]?.id ?? plan.machines[0]!.id;
          const opposite = { Left: 'Right', Right: 'Left', Up: 'Down', Down: 'Up' }[direction];
          const press = (state: EditorState, word: string) =>
            handle(state, { type: 'key', key: `Arrow${word}`, shift, alt: false, ctrl: false });
          const begun = select(start(plan), [id]);
          const once = press(begun, direction);
          const item = (state: EditorState) =>
            [...state.history.present.things, ...state.history.present.machines].find((one) => one.id === id)!;
          expect(item(once)).not.toEqual(item(begun));
          const twice = item(press(once, opposite));
          expect(twice.x).toBeCloseTo(item(begun).x, 9);
          expect(twice.y).toBeCloseTo(item(begun).y, 9);
          expect(undo(once).history.present).toEqual(plan);
        }),
        RUNS,
      );
    },
    TIMEOUT,
  );
});
