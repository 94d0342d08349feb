import { distanceToSegment, dot, sub } from '../../geometry';
import { addOpening, createId, type Opening } from '../../plan';
import { deriveScene } from '../../scene';
import { optionWords } from '../../text';
import { aimOf } from '../gestures/aim';
import { nearestWall, placeOnWall, readoutsOn } from '../gestures/moveOpening';
import type { EditorState, PointerInput } from '../types';
import { type Ghost, keepGhost, showGhost } from './ghost';
import type { Step, Tool } from './tool';
import type { AddOpeningState } from './toolState';

/** An opening shows on the wall that is this near to the pointer, mm. */
const WALL_WITHIN = 900;

/** Usual sizes, mm: a door 36 in wide and 80 in high; a pass-through window with its sill at counter height. */
const SIZES: Readonly<Record<Opening['kind'], Pick<Opening, 'width' | 'height' | 'sill' | 'swing'>>> = {
  door: { width: 914, height: 2032, sill: 0, swing: 'out' },
  'double-door': { width: 1829, height: 2032, sill: 0, swing: 'out' },
  'cased-opening': { width: 1219, height: 2134, sill: 0, swing: 'none' },
  'pass-window': { width: 1219, height: 914, sill: 914, swing: 'none' },
  window: { width: 914, height: 1067, sill: 1067, swing: 'none' },
};

/** Cuts a door or a window into the wall beside the pointer. */
export const addOpeningTool: Tool<AddOpeningState> = {
  id: 'add-opening',
  name: 'Cut an opening',
  start: (choice) => ({ tool: 'add-opening', name: 'idle', kind: choice.tool === 'add-opening' ? choice.kind : 'door' }),
  hint: ({ kind }) => `Press on a wall where the ${optionWords(kind)} goes. Shift keeps the tool for another.`,
  cursor: () => 'crosshair',
  transitions: {
    idle: { move: show, down: show, up: keep },
    showing: { move: show, down: show, up: keep, cancel: (state) => ({ tool: { ...state, name: 'idle' }, preview: null }) },
  },
};

function show(state: AddOpeningState, event: PointerInput, editor: EditorState): Step {
  return { tool: { ...state, name: 'showing' }, preview: showGhost(editor, ghostOf(state, event, editor)) };
}

function keep(state: AddOpeningState, event: PointerInput, editor: EditorState): Step {
  return keepGhost(editor, ghostOf(state, event, editor), { ...state, name: 'idle' }, event);
}

function ghostOf({ kind }: AddOpeningState, event: PointerInput, editor: EditorState): Ghost | null {
  const plan = editor.history.present;
  const wall = nearestWall(deriveScene(plan).room.walls, event.point);
  if (wall === undefined || distanceToSegment(event.point, wall) > WALL_WITHIN) return null;
  const { width, ...rest } = SIZES[kind];
  const fitted = Math.min(width, wall.length);
  const along = dot(sub(event.point, wall.a), wall.direction) - fitted / 2;
  const { from, guides } = placeOnWall(plan, wall, { width: fitted }, along, aimOf(event, editor));
  const id = createId(plan, kind);
  return {
    label: `Add ${optionWords(kind)}`,
    recipe: addOpening({ id, kind, wall: wall.id, from, width: fitted, ...rest, hinge: 'start' }),
    ids: [id],
    guides,
    readouts: readoutsOn(wall, from, fitted),
  };
}
