import type { EditorState } from '../types';
import { addHoodTool } from './addHood';
import { addOpeningTool } from './addOpening';
import { addTableTool } from './addTable';
import { addThingTool } from './addThing';
import { drawRoomTool } from './drawRoom';
import { drawRunTool } from './drawRun';
import { measureTool } from './measure';
import { moveWallTool } from './moveWall';
import { panTool } from './pan';
import { placeMachineTool } from './placeMachine';
import { selectTool } from './select';
import { runTool, type Step, type Tool, type ToolEvent } from './tool';
import type { ToolChoice, ToolId, ToolState } from './toolState';

/** One file a tool; the compiler holds each to its own states, the registry to all of them. */
const REGISTRY: { readonly [Id in ToolId]: Tool<Extract<ToolState, { tool: Id }>> } = {
  select: selectTool,
  'move-wall': moveWallTool,
  'draw-room': drawRoomTool,
  'add-opening': addOpeningTool,
  'add-table': addTableTool,
  'add-thing': addThingTool,
  'place-machine': placeMachineTool,
  'draw-run': drawRunTool,
  'add-hood': addHoodTool,
  pan: panTool,
  measure: measureTool,
};

/** The tools, in the order of a menu. */
export const TOOLS: readonly { readonly id: ToolId; readonly name: string }[] = Object.values(REGISTRY).map(({ id, name }) => ({
  id,
  name,
}));

/** The tool that a state belongs to. */
const toolOf = (state: ToolState) => REGISTRY[state.tool] as unknown as Tool;

/** One event through the tool in hand; null when it does not answer. */
export const stepTool = (event: ToolEvent, editor: EditorState): Step | null => runTool(toolOf(editor.tool), editor.tool, event, editor);

/** The first state of a chosen tool. */
export const startTool = (choice: ToolChoice): ToolState => REGISTRY[choice.tool].start(choice);

/** What the tool in hand waits for, in plain words. */
export const hintOf = (state: ToolState): string => toolOf(state).hint(state);

/** Shape of the pointer that the tool in hand asks for. */
export const toolCursor = (state: ToolState) => toolOf(state).cursor(state);

/** Whether the tool is in the middle of something that Escape would drop. A ghost that follows the pointer is nothing begun. */
export const isBusy = ({ name }: ToolState): boolean => name !== 'idle' && name !== 'measured' && name !== 'showing';

/** Whether the tool shows, at the pointer, what it would add. */
export const isShowing = ({ name }: ToolState): boolean => name === 'showing';

/** The tool in hand with whatever it had begun dropped. */
export const restTool = (editor: EditorState): ToolState => stepTool({ type: 'cancel' }, editor)?.tool ?? editor.tool;
