import { distance, nearestOnSegment } from '../../geometry';
import { addCorner, createId, edit } from '../../plan';
import { deriveScene } from '../../scene';
import { aimOf } from '../gestures/aim';
import { nearestWall } from '../gestures/moveOpening';
import { pullGesture } from '../gestures/pullGesture';
import type { EditorState, PointerInput } from '../types';
import { commitPreview } from './commitPreview';
import { isDrag, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { MoveWallState } from './toolState';

type In<N extends MoveWallState['name']> = Extract<MoveWallState, { name: N }>;

const idle: MoveWallState = { tool: 'move-wall', name: 'idle' };

/** How far from a wall a press still takes it, as a multiple of the pointer's own reach. */
const REACH = 2;

/** Drags walls and corners without choosing them first; two quick presses put a corner into a wall. */
export const moveWallTool: Tool<MoveWallState> = {
  id: 'move-wall',
  name: 'Move walls',
  start: () => idle,
  hint: () => 'Drag a wall or a corner. Press twice on a wall to put a corner into it; drag a corner onto the next to take it out.',
  cursor: ({ name }) => (name === 'dragging' ? 'move' : 'default'),
  transitions: {
    idle: { down: press, move: hover, double: breakWall },
    pressed: { move: beginDrag, up: (state) => ({ tool: idle, selection: [state.wall] }), cancel: () => ({ tool: idle }) },
    dragging: { move: drag, up: drop, cancel: () => ({ tool: idle, preview: null }) },
  },
};

interface WallHit {
  wall: string;
  corner: string | null;
}

function wallUnder({ point, tolerance }: PointerInput, { history }: EditorState): WallHit | null {
  const { walls } = deriveScene(history.present).room;
  const corner = walls.find(({ a }) => distance(a, point) <= tolerance * REACH);
  if (corner !== undefined) return { wall: corner.id, corner: corner.id };
  const wall = nearestWall(walls, point);
  const isNear = wall !== undefined && distance(nearestOnSegment(point, wall).point, point) <= tolerance * REACH;
  return isNear ? { wall: wall.id, corner: null } : null;
}

function hover(_state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  const id = wallUnder(event, editor)?.wall ?? null;
  return id === editor.hover ? null : { hover: id };
}

function press(_state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  const hit = wallUnder(event, editor);
  return hit === null ? null : { tool: { tool: 'move-wall', name: 'pressed', press: pressAt(event), ...hit } };
}

function beginDrag(state: In<'pressed'>, event: PointerInput, editor: EditorState): Step | null {
  if (!isDrag(state.press, event)) return null;
  const common = { start: editor.history.present, from: state.press.point, to: event.point, held: null };
  const { wall, corner } = state;
  const gesture =
    corner === null
      ? ({ ...common, kind: 'move', ids: [wall] } as const)
      : ({ ...common, kind: 'handle', id: wall, handle: `corner-${corner}` } as const);
  return drag({ tool: 'move-wall', name: 'dragging', gesture }, event, editor);
}

function drag(state: In<'dragging'>, event: PointerInput, editor: EditorState): Step {
  const { gesture, preview } = pullGesture(state.gesture, event.point, aimOf(event, editor), editor.preview);
  return { tool: { ...state, gesture }, preview, hover: null };
}

function drop(state: In<'dragging'>, event: PointerInput, editor: EditorState): Step {
  const { preview } = pullGesture(state.gesture, event.point, aimOf(event, editor), editor.preview);
  return commitPreview({ ...editor, preview }, idle);
}

function breakWall(_state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  const plan = editor.history.present;
  const hit = wallUnder(event, editor);
  const wall = deriveScene(plan).room.walls.find(({ id }) => id === hit?.wall);
  if (hit === null || hit.corner !== null || wall === undefined) return null;
  const at = nearestOnSegment(event.point, wall).point;
  return { commit: edit(plan, 'Add corner', addCorner(wall.id, { id: createId(plan, 'wall'), x: at.x, y: at.y })) };
}
