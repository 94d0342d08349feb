import type { Point, Point3 } from '../../geometry';
import type { LineConfiguration, Opening, Stub, ThingKind } from '../../plan';
import type { Hand } from '../../scene';
import type { Gesture } from '../gestures/gesture';

/**
 * The states of all tools, as plain data. Each tool is a small machine: `tool` says which one,
 * `name` which state it is in, the rest is what that state remembers.
 */
export type ToolState =
  | SelectState
  | MoveWallState
  | DrawRoomState
  | AddOpeningState
  | AddTableState
  | AddThingState
  | PlaceMachineState
  | DrawRunState
  | AddHoodState
  | PanState
  | MeasureState;

export type ToolId = ToolState['tool'];

/** Where the pointer went down. */
export interface Press {
  readonly point: Point;
  readonly screen: Point;
}

/** The last press that did not become a drag: pressing the same place again goes to what lies below. */
export interface LastPress {
  readonly screen: Point;
  /** What this press chose, and what the press before it had chosen: two quick presses go back to that. */
  readonly id: string | null;
  readonly before: string | null;
}

export type SelectState = { readonly tool: 'select'; readonly last: LastPress | null } & (
  | { readonly name: 'idle' }
  /** Down on something or on the paper; not yet a drag. */
  | {
      readonly name: 'pressed';
      readonly press: Press;
      readonly id: string | null;
      readonly handle: string | null;
      readonly wasChosen: boolean;
      /** Ids of the things under it, topmost first. */
      readonly under: readonly string[];
    }
  | { readonly name: 'dragging'; readonly gesture: Gesture }
  | { readonly name: 'boxing'; readonly press: Press; readonly keep: readonly string[] }
  | { readonly name: 'panning'; readonly screen: Point }
);

export type MoveWallState = { readonly tool: 'move-wall' } & (
  | { readonly name: 'idle' }
  | { readonly name: 'pressed'; readonly press: Press; readonly wall: string; readonly corner: string | null }
  | { readonly name: 'dragging'; readonly gesture: Gesture }
);

export type DrawRoomState = { readonly tool: 'draw-room' } & (
  | { readonly name: 'idle' }
  /** First corner is down: a drag makes a rectangle, a press begins a chain. */
  | { readonly name: 'pressed'; readonly press: Press }
  | { readonly name: 'stretching'; readonly from: Point; readonly to: Point }
  | { readonly name: 'chaining'; readonly corners: readonly Point[]; readonly pointer: Point; readonly typed: string }
);

export type AddOpeningState = { readonly tool: 'add-opening'; readonly name: 'idle' | 'showing'; readonly kind: Opening['kind'] };

export type AddTableState = { readonly tool: 'add-table'; readonly role: 'soiled' | 'clean' } & (
  | { readonly name: 'idle' }
  | {
      readonly name: 'chaining';
      readonly start: TableStart;
      readonly points: readonly Point[];
      readonly pointer: Point;
      readonly typed: string;
      readonly press: Press | null;
    }
);

/** Where a new table begins: at a door of a machine, or free in the room. */
export interface TableStart {
  readonly point: Point;
  readonly joint: { readonly machine: string; readonly side: 'left' | 'right' | 'front' | 'back'; readonly normal: Point } | null;
}

export type ThingToAdd =
  | { readonly kind: 'thing'; readonly thing: ThingKind }
  | { readonly kind: 'column' }
  | { readonly kind: 'floor-drain'; readonly drain: 'floor-drain' | 'floor-sink' }
  | { readonly kind: 'stub'; readonly stub: Stub['kind'] };

export type AddThingState = {
  readonly tool: 'add-thing';
  readonly name: 'idle' | 'showing';
  readonly add: ThingToAdd;
  readonly turns: number;
};

export type PlaceMachineState = {
  readonly tool: 'place-machine';
  readonly name: 'idle' | 'showing';
  readonly sheet: string;
  /** A whole line with its tables, or null for the machine alone. */
  readonly line: { readonly configuration: LineConfiguration; readonly hand: Hand } | null;
  readonly turns: number;
};

export type DrawRunState = { readonly tool: 'draw-run' } & (
  | { readonly name: 'idle' }
  | {
      readonly name: 'chaining';
      readonly machine: string;
      readonly points: readonly Point3[];
      readonly pointer: Point;
      readonly z: number;
      readonly typed: string;
    }
);

export type AddHoodState = { readonly tool: 'add-hood' } & (
  | { readonly name: 'idle' | 'showing' }
  | { readonly name: 'pressed'; readonly press: Press }
  | { readonly name: 'stretching'; readonly from: Point }
);

export type PanState = { readonly tool: 'pan' } & ({ readonly name: 'idle' } | { readonly name: 'panning'; readonly screen: Point });

export type MeasureState = { readonly tool: 'measure' } & (
  | { readonly name: 'idle' }
  | { readonly name: 'measuring'; readonly from: Point; readonly press: Press }
  | { readonly name: 'measured'; readonly from: Point; readonly to: Point }
);

/** What a tool is chosen with. */
export type ToolChoice =
  | { readonly tool: 'select' | 'move-wall' | 'draw-room' | 'draw-run' | 'add-hood' | 'pan' | 'measure' }
  | { readonly tool: 'add-opening'; readonly kind: Opening['kind'] }
  | { readonly tool: 'add-table'; readonly role: 'soiled' | 'clean' }
  | { readonly tool: 'add-thing'; readonly add: ThingToAdd }
  | {
      readonly tool: 'place-machine';
      readonly sheet: string;
      readonly line?: { readonly configuration: LineConfiguration; readonly hand: Hand } | null;
    };
