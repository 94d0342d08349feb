import type { Point } from '../geometry';
import type { History, Plan, Transaction } from '../plan';
import type { Clip } from './clipboard/clip';
import type { ToolState } from './tools/toolState';

/**
 * What the editor holds while a person works: plain data, changed only by `handle` and the commands
 * of this folder. Everything in plan millimetres unless its name says px.
 */
export interface EditorState {
  /** The plan (`history.present`) with what can be undone and redone. */
  readonly history: History;
  /** Ids of what is chosen, in the order in which it was chosen. */
  readonly selection: readonly string[];
  /** Id of the chosen handle of the one chosen thing (a corner, a point of a run…); arrows and delete act on it. */
  readonly handle: string | null;
  readonly tool: ToolState;
  readonly view: View;
  /** Size of the canvas, px. */
  readonly viewport: Viewport;
  /** Where the pointer was last while the middle button slides the paper, px. */
  readonly panning: Point | null;
  /** Id of what lies under the pointer. */
  readonly hover: string | null;
  /** Id of the handle under the pointer, of the one chosen thing. */
  readonly hoverHandle: string | null;
  /** What is being done: shown instead of the plan, dropped on cancel. */
  readonly preview: Preview | null;
  readonly clipboard: Clip | null;
  readonly message: Message | null;
}

/** Where the plan lies on the canvas: screen px = plan mm × scale + (dx, dy). */
export interface View {
  /** Px per mm. */
  readonly scale: number;
  /** Px. */
  readonly dx: number;
  readonly dy: number;
}

export interface Viewport {
  readonly width: number;
  readonly height: number;
}

/** A gesture in progress. `plan` is what the canvas draws; `transaction` is what a release would commit (null: nothing). */
export interface Preview {
  readonly plan: Plan;
  readonly transaction: Transaction | null;
  readonly guides: readonly Guide[];
  readonly readouts: readonly Readout[];
  /** A frame that is being drawn around things. */
  readonly box: { readonly from: Point; readonly to: Point } | null;
}

/** Why something snapped. */
export type GuideKind = 'flush' | 'aligned' | 'centred' | 'square' | 'joint' | 'overhang' | 'clearance' | 'step';

/** A line to draw while something is held by a snap. */
export interface Guide {
  readonly kind: GuideKind;
  readonly from: Point;
  readonly to: Point;
}

/** A live dimension. Lengths in mm, angles in degrees; the renderer formats them. */
export interface Readout {
  readonly kind: 'distance' | 'length' | 'angle' | 'height';
  /** Ends of what is measured; for an angle its vertex (`from`) and a point on its second arm. */
  readonly from: Point;
  readonly to: Point;
  readonly value: number;
}

/** Something to say to the person, once. */
export interface Message {
  readonly tone: 'note' | 'refused';
  readonly text: string;
}

export type PointerKind = 'mouse' | 'pen' | 'touch';

export interface Modifiers {
  readonly shift: boolean;
  readonly alt: boolean;
  /** Ctrl, or the command key. */
  readonly ctrl: boolean;
}

/** What the pointer meets on the canvas: a thing of the plan, or a handle of the chosen one. */
export interface Hit {
  readonly id: string;
  /** Id of the handle; null for the thing itself. */
  readonly handle: string | null;
}

/** A press, move or release of the pointer. `createPointerEvent` makes one from screen px. */
export interface PointerInput extends Modifiers {
  readonly type: 'down' | 'move' | 'up' | 'double';
  /** On the plan, mm. */
  readonly point: Point;
  /** On the canvas, px. */
  readonly screen: Point;
  /** How far from the point counts as on it, mm (screen px ÷ scale). */
  readonly tolerance: number;
  readonly pointer: PointerKind;
  /** What lies under the pointer as the canvas knows it: at a press all of it, topmost first; at a move of a free pointer the topmost alone. */
  readonly under: readonly Hit[];
  /** 0 main, 1 middle, 2 second. */
  readonly button: 0 | 1 | 2;
}

/** A key, as the browser names it (`KeyboardEvent.key`). */
export interface KeyInput extends Modifiers {
  readonly type: 'key';
  readonly key: string;
}

/** A turn of the wheel; px, positive toward the person. */
export interface WheelInput extends Modifiers {
  readonly type: 'wheel';
  readonly screen: Point;
  readonly deltaX: number;
  readonly deltaY: number;
}

/** Two fingers: their middle, how far it moved (px) and the factor by which their distance grew. */
export interface PinchInput {
  readonly type: 'pinch';
  readonly screen: Point;
  readonly factor: number;
  readonly dx: number;
  readonly dy: number;
}

/** The gesture was taken away (pointer cancelled, focus lost). */
export interface CancelInput {
  readonly type: 'cancel';
}

/** The pointer is no longer over the canvas, and holds nothing. */
export interface LeaveInput {
  readonly type: 'leave';
}

/** The canvas has a new size, px. */
export interface ResizeInput {
  readonly type: 'resize';
  readonly width: number;
  readonly height: number;
}

/** Shape of the pointer over the canvas; the app gives it to the browser. */
export type Cursor =
  | 'default'
  | 'pointer'
  | 'move'
  | 'grab'
  | 'grabbing'
  | 'crosshair'
  | 'ns-resize'
  | 'ew-resize'
  | 'nesw-resize'
  | 'nwse-resize';

export type EditorEvent = PointerInput | KeyInput | WheelInput | PinchInput | CancelInput | LeaveInput | ResizeInput;
