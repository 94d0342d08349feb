import type { Transaction } from '../../plan';
import type { CancelInput, Cursor, EditorState, KeyInput, Message, PointerInput, Preview, View } from '../types';
import type { ToolChoice, ToolId, ToolState } from './toolState';

/** The events that tools hear; view events (wheel, pinch, resize) are handled before them. */
export type ToolEvent = PointerInput | KeyInput | CancelInput;

/** What comes of an event: the parts of the editor's state that change, and a change of the plan to keep. */
export interface Step {
  readonly tool?: ToolState;
  readonly preview?: Preview | null;
  readonly selection?: readonly string[];
  readonly handle?: string | null;
  readonly hover?: string | null;
  readonly hoverHandle?: string | null;
  readonly message?: Message | null;
  readonly view?: View;
  readonly commit?: Transaction;
}

/** Answers an event in one state; null: not for this tool. */
export type Transition<S, E> = (state: S, event: E, editor: EditorState) => Step | null;

type EventOf<T extends ToolEvent['type']> = Extract<ToolEvent, { type: T }>;

type StateOf<S extends ToolState, N extends S['name']> = Extract<S, { name: N }> extends never ? S : Extract<S, { name: N }>;

/** For each state the events that it answers. An event without a row does nothing. */
export type Transitions<S extends ToolState> = {
  readonly [N in S['name']]: { readonly [T in ToolEvent['type']]?: Transition<StateOf<S, N>, EventOf<T>> };
};

/** A tool: what it is called, how it begins, what it waits for in each state, and its table of transitions. */
export interface Tool<S extends ToolState = ToolState> {
  readonly id: ToolId;
  readonly name: string;
  readonly start: (choice: ToolChoice) => S;
  readonly hint: (state: S) => string;
  readonly cursor: (state: S) => Cursor;
  readonly transitions: Transitions<S>;
}

/** One event through one tool. */
export function runTool<S extends ToolState>(tool: Tool<S>, state: S, event: ToolEvent, editor: EditorState): Step | null {
  const row = tool.transitions[state.name as S['name']] as { readonly [T in ToolEvent['type']]?: Transition<S, ToolEvent> };
  const transition = row[event.type];
  return transition === undefined ? null : transition(state, event, editor);
}
