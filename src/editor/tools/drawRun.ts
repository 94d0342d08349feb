import { along, directionTo, distance, type Point, type Point3 } from '../../geometry';
import { addRun, createId, type Plan, UNKNOWN_DUCT } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { aimOf } from '../gestures/aim';
import { collarOf, runLines } from '../gestures/moveRun';
import { snapPoint } from '../snap/snapPoint';
import { nudgeFor } from '../snap/step';
import type { EditorState, KeyInput, PointerInput, Readout } from '../types';
import { commitPreview, plainPreview } from './commitPreview';
import { CHOOSE, type Ghost, showGhost } from './ghost';
import type { Step, Tool } from './tool';
import type { DrawRunState } from './toolState';
import { typedLength, typeKey } from './typed';

type In<N extends DrawRunState['name']> = Extract<DrawRunState, { name: N }>;

const idle: DrawRunState = { tool: 'draw-run', name: 'idle' };

/** How far above the collar a run turns level where no ceiling is known, and how far below a ceiling it stays, mm. */
const RISE = 600;
const BELOW_CEILING = 300;

/** Nominal 8 in, where the data sheet asks for no size of its own, mm. */
const DIAMETER = 203;

/** Draws a duct run from a machine's collar: up, then from press to press, to the open air. */
export const drawRunTool: Tool<DrawRunState> = {
  id: 'draw-run',
  name: 'Draw a duct run',
  start: () => idle,
  hint: (state) =>
    state.name === 'chaining'
      ? `Press where the run turns, or type the length of a leg${state.typed === '' ? '' : `: ${state.typed}`}. Page Up and Page Down change its height. Enter ends it.`
      : 'Press the machine that the run begins at.',
  cursor: () => 'crosshair',
  transitions: {
    idle: { down: begin },
    chaining: {
      move: aimNext,
      down: addPoint,
      key: typeKeys,
      double: (state, _event, editor) => finish(state, state.points, editor),
      cancel: () => ({ tool: idle, preview: null }),
    },
  },
};

function begin(_state: In<'idle'>, event: PointerInput, editor: EditorState): Step {
  const scene = deriveScene(editor.history.present);
  const machine = machineFor(scene, event.point, editor.selection);
  if (machine === null) return { message: { tone: 'refused', text: 'A run begins at a machine. Put a machine into the room first.' } };
  const start = startOf(scene, machine);
  const z = levelFor(scene, start.z);
  const tool: DrawRunState = { tool: 'draw-run', name: 'chaining', machine, points: [{ ...start, z }], pointer: event.point, z, typed: '' };
  return { tool, preview: plainPreview(editor, {}) };
}

/** The machine that was pressed, is chosen, or is nearest; one with a collar before one without. */
function machineFor({ machines }: Scene, point: Point, selection: readonly string[]): string | null {
  const rank = ({ machine, collar }: Scene['machines'][number]) =>
    distance(machine, point) - (selection.includes(machine.id) ? 1e4 : 0) - (collar === null ? 0 : 2e3);
  return machines.toSorted((a, b) => rank(a) - rank(b))[0]?.machine.id ?? null;
}

function startOf(scene: Scene, machine: string): Point3 {
  const placed = scene.machines.find((item) => item.machine.id === machine);
  return collarOf(scene, machine) ?? { x: placed?.machine.x ?? 0, y: placed?.machine.y ?? 0, z: placed?.sheet.height ?? 0 };
}

function levelFor({ room }: Scene, collarZ: number): number {
  const ceiling = room.ceilingHeight;
  return ceiling === null ? collarZ + RISE : Math.max(collarZ + 50, Math.min(collarZ + RISE, ceiling - BELOW_CEILING));
}

function aimNext(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step {
  const { point, guides } = nextPoint(state, event, editor);
  const preview = showRun(state, [...state.points, point], editor);
  return { tool: { ...state, pointer: point }, preview: { ...preview, guides } };
}

function addPoint(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step | null {
  const { point } = nextPoint(state, event, editor);
  const last = state.points.at(-1);
  if (last !== undefined && distance(last, point) < 1 && last.z === point.z) return finish(state, state.points, editor);
  return extend(state, point, editor);
}

function extend(state: In<'chaining'>, point: Point3, editor: EditorState): Step {
  const points = [...state.points, point];
  return { tool: { ...state, points, pointer: point, typed: '' }, preview: showRun(state, points, editor) };
}

/** Square and at 45°, or at a duct exit with the exit's own height. */
function nextPoint(
  state: In<'chaining'>,
  event: PointerInput,
  editor: EditorState,
): { point: Point3; guides: ReturnType<typeof snapPoint>['guides'] } {
  const scene = deriveScene(editor.history.present);
  const aim = aimOf(event, editor);
  if (aim.isFree) return { point: { ...event.point, z: state.z }, guides: [] };
  const exits = scene.plan.room.stubs.filter(({ kind }) => kind === 'duct-exit');
  const last = state.points.at(-1) ?? event.point;
  const reach = Math.max(aim.reach, distance(last, event.point) * 0.07);
  const snapped = snapPoint(event.point, { points: exits, lines: runLines(scene, state.machine, [last]) }, reach, aim.step);
  const exit = exits.find(({ x, y }) => x === snapped.point.x && y === snapped.point.y);
  return { point: { x: snapped.point.x, y: snapped.point.y, z: exit?.z ?? state.z }, guides: snapped.guides };
}

function typeKeys(state: In<'chaining'>, event: KeyInput, editor: EditorState): Step | null {
  if (event.key === 'PageUp' || event.key === 'PageDown') return raise(state, event, editor);
  if (event.key !== 'Enter') {
    const typed = typeKey(state.typed, event);
    return typed === null ? null : { tool: { ...state, typed } };
  }
  return state.typed === '' ? finish(state, state.points, editor) : takeTyped(state, editor);
}

/** Lifts or lowers what follows; shift ten times as far. */
function raise(state: In<'chaining'>, { key, shift }: KeyInput, editor: EditorState): Step {
  const by = nudgeFor(editor.history.present.settings.units, 0) * (shift ? 10 : 1) * (key === 'PageUp' ? 1 : -1);
  const z = Math.max(0, state.z + by);
  const isFirst = state.points.length === 1;
  const points = isFirst ? state.points.map((point) => ({ ...point, z })) : state.points;
  return { tool: { ...state, z, points } };
}

function takeTyped(state: In<'chaining'>, editor: EditorState): Step | null {
  const last = state.points.at(-1);
  const mm = typedLength(state.typed, editor.history.present.settings.units);
  if (mm === null || last === undefined)
    return { tool: { ...state, typed: '' }, message: { tone: 'refused', text: `“${state.typed}” is not a length.` } };
  return extend(state, { ...along(last, directionTo(last, state.pointer), mm), z: state.z }, editor);
}

function showRun(state: In<'chaining'>, points: readonly Point3[], editor: EditorState) {
  return showGhost(editor, ghostOf(state, points, editor.history.present)) ?? plainPreview(editor, {});
}

function finish(state: In<'chaining'>, points: readonly Point3[], editor: EditorState): Step {
  const ghost = ghostOf(state, points, editor.history.present);
  return commitPreview({ ...editor, preview: showGhost(editor, ghost) }, CHOOSE, { selection: ghost.ids });
}

function ghostOf({ machine }: In<'chaining'>, points: readonly Point3[], plan: Plan): Ghost {
  const id = createId(plan, 'run');
  const vent = deriveScene(plan).machines.find((item) => item.machine.id === machine)?.sheet.vent;
  const diameter = vent?.kind === 'direct' ? vent.ductDiameter : DIAMETER;
  const way = points.map(({ x, y, z }) => ({ x, y, z }));
  return {
    label: 'Add duct run',
    recipe: addRun({ id, machine, points: way, diameter, fan: null, outlet: 'wall', duct: UNKNOWN_DUCT }),
    ids: [id],
    readouts: legReadouts(points),
  };
}

const legReadouts = (points: readonly Point3[]): Readout[] =>
  points.slice(1).map((to, i) => ({ kind: 'length', from: points[i] ?? to, to, value: distance(points[i] ?? to, to) }));
