import { along, angleOf, differenceDeg, directionOf, distance, dot, type Point, rightOf, sub } from '../../geometry';
import { addTable, createId, FLUSH, type Plan, type Table } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { type Aim, aimOf } from '../gestures/aim';
import { CATCH_WITHIN } from '../snap/joint';
import { roundTo } from '../snap/step';
import type { EditorState, KeyInput, PointerInput, Readout } from '../types';
import { commitPreview, plainPreview } from './commitPreview';
import { CHOOSE, type Ghost, showGhost } from './ghost';
import { createPlainTable } from './plainTable';
import { isDrag, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { AddTableState, TableStart } from './toolState';
import { typedLength, typeKey } from './typed';

type In<N extends AddTableState['name']> = Extract<AddTableState, { name: N }>;

/** A table begins at a door when the pointer comes this near to it, mm. */
const DOOR_WITHIN = CATCH_WITHIN * 2;

/** Turns between legs keep to this, degrees. */
const TURN_STEP_DEG = 15;

/** A table turns no farther than this between two legs, degrees; the plan has it so. */
const MOST_TURN_DEG = 135;

/** A leg shorter than this is none, mm. */
const LEAST_LEG = 100;

/** Draws a table from a machine's door, or free in the room: a drag for a straight one, presses for one with turns. */
export const addTableTool: Tool<AddTableState> = {
  id: 'add-table',
  name: 'Draw a table',
  start: (choice) => idleFor(choice.tool === 'add-table' ? choice.role : 'soiled'),
  hint: (state) =>
    state.name === 'chaining'
      ? `Press where it turns, or type the length${state.typed === '' ? '' : `: ${state.typed}`}. Enter, or a second press on its end, finishes it.`
      : `Press at a door of the machine and drag the ${state.role} table out.`,
  cursor: () => 'crosshair',
  transitions: {
    idle: { down: begin, move: showStart },
    chaining: {
      move: aimEnd,
      down: (state, event) => ({ tool: { ...state, press: pressAt(event) } }),
      up: addLegHere,
      key: typeLength,
      double: (state, _event, editor) => finish(state, state.points, editor),
      cancel: (state) => ({ tool: idleFor(state.role), preview: null }),
    },
  },
};

const idleFor = (role: Table['role']): AddTableState => ({ tool: 'add-table', name: 'idle', role });

function showStart(_state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  const { joint, point } = startAt(deriveScene(editor.history.present), event.point);
  if (joint === null) return editor.preview === null ? null : { preview: null };
  const half = along({ x: 0, y: 0 }, rightOf(joint.normal), CATCH_WITHIN);
  return {
    preview: plainPreview(editor, { guides: [{ kind: 'joint', from: sub(point, half), to: sub(point, { x: -half.x, y: -half.y }) }] }),
  };
}

function begin(state: In<'idle'>, event: PointerInput, editor: EditorState): Step {
  const start = startAt(deriveScene(editor.history.present), event.point);
  const tool: AddTableState = {
    ...state,
    name: 'chaining',
    start,
    points: [start.point],
    pointer: event.point,
    typed: '',
    press: pressAt(event),
  };
  return { tool, preview: plainPreview(editor, {}) };
}

/** The nearest door without a table, else the place itself. */
function startAt(scene: Scene, point: Point): TableStart {
  const doors = scene.machines.flatMap(({ machine, sides }) =>
    Object.values(sides).flatMap(({ side, door, table, normal }) =>
      door === null || table !== null ? [] : [{ point: door, joint: { machine: machine.id, side, normal }, away: distance(door, point) }],
    ),
  );
  const near = doors.filter(({ away }) => away <= DOOR_WITHIN).sort((a, b) => a.away - b.away)[0];
  return near === undefined ? { point, joint: null } : { point: near.point, joint: near.joint };
}

function aimEnd(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step {
  const pointer = nextPoint(state, event.point, aimOf(event, editor));
  return { tool: { ...state, pointer }, preview: showTable(state, [...state.points, pointer], editor) };
}

/** Up after a drag from the start finishes a straight table; up after a press adds a leg, on its own end it finishes. */
function addLegHere(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step | null {
  const { press, points } = state;
  const last = points.at(-1);
  if (press === null || last === undefined) return null;
  const point = nextPoint(state, event.point, aimOf(event, editor));
  const isLong = distance(last, point) >= LEAST_LEG;
  if (isDrag(press, event)) return isLong ? finish(state, [...points, point], editor) : { tool: { ...state, press: null } };
  if (!isLong) return points.length > 1 ? finish(state, points, editor) : { tool: { ...state, press: null } };
  return extend(state, point, editor);
}

function extend(state: In<'chaining'>, point: Point, editor: EditorState): Step {
  const points = [...state.points, point];
  return { tool: { ...state, points, pointer: point, typed: '', press: null }, preview: showTable(state, points, editor) };
}

function typeLength(state: In<'chaining'>, event: KeyInput, editor: EditorState): Step | null {
  if (event.key !== 'Enter') {
    const typed = typeKey(state.typed, event);
    return typed === null ? null : { tool: { ...state, typed } };
  }
  if (state.typed === '') return finish(state, state.points, editor);
  const last = state.points.at(-1);
  const mm = typedLength(state.typed, editor.history.present.settings.units);
  if (mm === null || last === undefined)
    return { tool: { ...state, typed: '' }, message: { tone: 'refused', text: `“${state.typed}” is not a length.` } };
  return extend(state, along(last, headingFor(state, state.pointer), mm), editor);
}

/** The first leg of a joined table leaves its door square; each further one turns by steps, as far as a table can turn. */
function nextPoint(state: In<'chaining'>, to: Point, aim: Aim): Point {
  const last = state.points.at(-1) ?? to;
  const heading = headingFor(state, to, aim.isFree ? 0 : TURN_STEP_DEG);
  return along(last, heading, Math.max(roundTo(dot(sub(to, last), heading), aim.step), 0));
}

function headingFor({ start, points }: In<'chaining'>, to: Point, step = TURN_STEP_DEG): Point {
  const [last, before] = [points.at(-1) ?? to, points.at(-2)];
  if (before === undefined && start.joint !== null) return start.joint.normal;
  const base = before === undefined ? 0 : angleOf(sub(last, before));
  const turn = roundTo(differenceDeg(base, angleOf(sub(to, last))), step);
  return directionOf(base + (before === undefined ? turn : Math.min(Math.max(turn, -MOST_TURN_DEG), MOST_TURN_DEG)));
}

function showTable(state: In<'chaining'>, points: readonly Point[], editor: EditorState) {
  return showGhost(editor, ghostOf(state, points, editor.history.present)) ?? plainPreview(editor, { readouts: readoutsOf(points) });
}

function finish(state: In<'chaining'>, points: readonly Point[], editor: EditorState): Step {
  const ghost = ghostOf(state, points, editor.history.present);
  const preview = showGhost(editor, ghost);
  if (ghost === null || preview === null) return { tool: idleFor(state.role), preview: null };
  return commitPreview({ ...editor, preview }, CHOOSE, { selection: ghost.ids });
}

/** The table through these points; null while it has no length. */
function ghostOf({ role, start }: In<'chaining'>, points: readonly Point[], plan: Plan): Ghost | null {
  const legs = legsThrough(points);
  const [from, to] = points;
  if (legs.length === 0 || from === undefined || to === undefined) return null;
  const place: Table['place'] =
    start.joint === null
      ? { kind: 'free', x: from.x, y: from.y, headingDeg: angleOf(sub(to, from)) }
      : { kind: 'joined', machine: start.joint.machine, side: start.joint.side, ...FLUSH };
  const id = createId(plan, `${role}-table`);
  const table = createPlainTable(plan, { id, role, place, legs });
  return { label: `Add ${role} table`, recipe: addTable(table), ids: [id], readouts: readoutsOf(points) };
}

function legsThrough(points: readonly Point[]): Table['legs'] {
  const ways = points.slice(1).flatMap((to, i) => {
    const way = sub(to, points[i] ?? to);
    const length = Math.hypot(way.x, way.y);
    return length < LEAST_LEG ? [] : [{ length, heading: angleOf(way) }];
  });
  return ways.map(({ length, heading }, i) => ({ length, turnDeg: i === 0 ? 0 : differenceDeg(ways[i - 1]?.heading ?? heading, heading) }));
}

const readoutsOf = (points: readonly Point[]): Readout[] =>
  points.slice(1).map((to, i) => ({ kind: 'length', from: points[i] ?? to, to, value: distance(points[i] ?? to, to) }));
