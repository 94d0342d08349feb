import type { Connection, ControlsPosition, DataSheet, Side } from '../catalog';
import type { Body, Bounds, Frame, Point, Point3, Polygon, Segment } from '../geometry';
import type { Column, Fitting, FloorDrain, Hood, Machine, Opening, Plan, Run, Stub, Table, Thing } from '../plan';

/**
 * The scene: the plan worked out in space. Everything here is derived, plain data, in plan
 * millimetres (x right, y down the paper, z up). Nothing of it is ever stored.
 */
export interface Scene {
  plan: Plan;
  room: PlacedRoom;
  machines: PlacedMachine[];
  tables: PlacedTable[];
  things: PlacedThing[];
  hoods: PlacedHood[];
  runs: PlacedRun[];
  /** One for each table that is joined to a machine. */
  joints: Joint[];
  /** One for each machine. */
  lines: Line[];
  /** Every body in the room, for overlaps and free floor. */
  solids: Solid[];
  /** Item marks of everything that bears one, by id: `1`, `2`, … in the order of the line. */
  marks: Record<string, string>;
}

// ---------------------------------------------------------------- the room

export interface Wall extends Segment {
  /** Id of the corner where the wall begins. */
  id: string;
  length: number;
  /** Unit direction from a to b, and unit normal into the room. */
  direction: Point;
  inward: Point;
}

export interface PlacedOpening {
  opening: Opening;
  wall: Wall;
  /** Clear opening on the wall line, from the near edge to the far edge. */
  segment: Segment;
  centre: Point;
  /** Floor that the leaves sweep, as convex fans; empty for openings that do not swing into the room. */
  sweep: Polygon[];
  /** A person can walk through it. */
  isWay: boolean;
}

export interface PlacedRoom {
  /** Outline, oriented so that its signed area is positive. */
  outline: Polygon;
  walls: Wall[];
  openings: PlacedOpening[];
  columns: { column: Column; polygon: Polygon }[];
  floorDrains: { drain: FloorDrain; centre: Point; polygon: Polygon }[];
  stubs: { stub: Stub; point: Point3 }[];
  ceilingHeight: number | null;
  areaMm2: number;
}

// ---------------------------------------------------------------- machines

export interface PlacedSide {
  side: Side;
  /** Outward unit normal. */
  normal: Point;
  /** The footprint edge on this side; from the left end to the right end of a person who faces the side from outside. */
  edge: Segment;
  centre: Point;
  /** Where the rack's centre line passes the door; null where there is no door. */
  door: Point | null;
  /** A wall is so near that no hood edge could pass it: the side is closed. */
  isAgainstWall: boolean;
  /** Distance from the side outward to the nearest wall in front of it; null when there is none within 10 m. */
  wallDistance: number | null;
  /** Table joined here. */
  table: string | null;
}

export interface PlacedControls {
  position: ControlsPosition;
  side: Side;
  /** The strip of the footprint edge that the controls take. */
  face: Segment;
  centre: Point3;
  normal: Point;
  /** Floor before the controls, over which a hand reaches: the strip moved out by the depth of a reach. */
  reachZone: Polygon;
}

export interface PlacedMachine {
  /** Its number in the plan's list of machines, for the path of what it lacks. */
  at: number;
  machine: Machine;
  sheet: DataSheet;
  /** Local frame: origin at the back left corner of the footprint. */
  frame: Frame;
  footprint: Polygon;
  sides: Record<Side, PlacedSide>;
  /** null when the plan names a position that the data sheet does not have. */
  controls: PlacedControls | null;
  connections: { connection: Connection; point: Point3 }[];
  /** Collar of a direct vent; null where the machine has none. */
  collar: Point3 | null;
  /** Room that the open doors need above the body. */
  doorLift: Solid;
  /** Free floor that service needs, on sides without a table. */
  serviceZones: { side: Side; depth: number; polygon: Polygon }[];
}

// ---------------------------------------------------------------- tables

/** A point of the deck's long profile. */
export interface DeckNode {
  /** Along the rack centre line from the joint. */
  s: number;
  /** Deck height above the floor; null when it is not known. */
  z: number | null;
}

/** A stretch of deck between two breaks of slope. Positive slope: water runs toward the joint. */
export interface DeckStretch {
  from: number;
  to: number;
  slope: number;
  /** Where its water ends: at the machine, in a sink, or nowhere (it stands). */
  runsTo: 'joint' | 'sink' | 'stands';
}

/** Water that stands on a deck. */
export interface Pool {
  from: number;
  to: number;
  /** Along the table. */
  lowest: number;
  /** Depth at the lowest spot before it would run over; 0 where the deck is only level. */
  depth: number;
}

/** A fitting along its table. */
export interface LaidFitting {
  fitting: Fitting;
  /** Extent along the table. */
  from: number;
  to: number;
}

export interface PlacedFitting extends LaidFitting {
  polygon: Polygon;
  centre: Point;
}

/** What a deck's heights and fittings are, along the rack centre line from the joint outward. */
export interface LaidDeck {
  length: number;
  /** Deck heights at the joint, turns and end. */
  nodes: DeckNode[];
  /** null when a deck height is missing. */
  water: {
    stretches: DeckStretch[];
    pools: Pool[];
    /** Toward its drain, over all stretches; negative when one falls away from it. */
    leastSlope: number;
  } | null;
}

export interface PlacedTable extends LaidDeck {
  table: Table;
  /** The line it belongs to: id of the machine; null for a table that no joint ties to a machine. */
  machine: string | null;
  /** Rack centre line from the joint to the far end, a point for each leg end. */
  path: Point[];
  /** Unit direction outward from the joint. */
  heading: Point;
  /** Deck as convex pieces, one a leg. */
  deck: Polygon[];
  outline: Polygon;
  /** Edge where people stand, and the edge with the backsplash, from the joint outward. */
  operatorEdge: Point[];
  backEdge: Point[];
  fittings: PlacedFitting[];
}

/** Where a table meets a machine side. Each measured whether good or bad. */
export interface Joint {
  table: string;
  machine: string;
  side: Side;
  point: Point;
  /** Least distance from the table's end edge to the machine side; negative when they overlap. */
  gap: number;
  /** Rack centre line of the table from that of the door; positive to the right of a person walking out of the machine. */
  offset: number;
  /** Off square, either way: 0 or more. */
  angleDeg: number;
  /** Table deck height minus track height; null when the deck height is not known. */
  deckStep: number | null;
  hasDoor: boolean;
}

// ---------------------------------------------------------------- the line

export type Configuration =
  | { kind: 'straight' }
  | { kind: 'corner'; side: 'left' | 'right' }
  | { kind: 'none'; reason: 'no-table' | 'one-table' | 'back' | 'same-side' | 'three-sides' | 'no-door' | 'two-roles' };

export type Hand = 'left-to-right' | 'right-to-left';

export const STATION_KINDS = ['drop-off', 'scrap', 'pre-rinse', 'soiled-landing', 'machine', 'clean-landing', 'storage'] as const;
export type StationKind = (typeof STATION_KINDS)[number];

export interface Station {
  kind: StationKind;
  /** What it is: id of the table, fitting, machine or thing that serves as it; null when the line lacks it. */
  subject: string | null;
  place: Point | null;
  /** Length along the line and whole racks that it holds; null where that has no meaning. */
  length: number | null;
  racks: number | null;
}

/** Quadrant (corner) or half-plane (straight) where the operator stands, before tables are taken out of it. */
export interface Inside {
  /** For a corner, the footprint corner that both sides share; for straight-through the middle of the front. */
  corner: Point;
  /** One normal for straight-through, two for a corner. The inside is { p : (p − corner)·n > 0 for each n }. */
  normals: Point[];
}

export interface Line {
  machine: PlacedMachine;
  soiled: PlacedTable | null;
  clean: PlacedTable | null;
  configuration: Configuration;
  /** null when there is no configuration or no soiled table. */
  hand: Hand | null;
  inside: Inside | null;
  /** Where the operator stands: a free place inside the turn, near the controls; null when there is none. */
  stand: { centre: Point; width: number; reach: number } | null;
  stations: Station[];
  /** Way of soiled ware, of racks through the machine, and of clean ware, each in the direction of travel. */
  ways: { soiled: Point[]; rack: Point[]; clean: Point[] };
}

// ---------------------------------------------------------------- things, hoods, runs, bodies

export interface PlacedThing {
  /** Its number in the plan's list of things, for the path of what it lacks. */
  at: number;
  thing: Thing;
  name: string;
  polygon: Polygon;
  /** Unit vector out of its front. */
  front: Point;
}

export interface PlacedHood {
  hood: Hood;
  /** Inside edge of the lip. */
  polygon: Polygon;
  /** Machines whose footprint it covers at least in part. */
  covers: {
    machine: string;
    /** For each side, how far the lip's inside edge lies outside the machine side (least along the side); negative when short of it. */
    overhang: Record<Side, number>;
  }[];
}

export interface Bend {
  /** Along the run from the collar, and the place. */
  at: number;
  point: Point3;
  /** 0 for straight on, 90 for a right angle. */
  angleDeg: number;
}

export interface PlacedRun {
  run: Run;
  /** From the collar to the open air; the first point is the collar when the machine has one. */
  points: Point3[];
  length: number;
  /** In three dimensions; the collar points up, so a run that leaves it sideways begins with a bend. */
  bends: Bend[];
  fan: { at: number; point: Point3; isOnRun: boolean } | null;
}

export type SolidKind =
  | 'machine'
  | 'table'
  | 'backsplash'
  | 'overshelf'
  | 'thing'
  | 'hood'
  | 'run'
  | 'column'
  | 'door-lift'
  | 'recovery-box';

/** A body: convex pieces in plan between two heights. */
export interface Solid {
  /** Id of what it belongs to. */
  owner: string;
  kind: SolidKind;
  pieces: Polygon[];
  /** The box around all of them, in plan. */
  bounds: Bounds;
  zFrom: number;
  zTo: number;
  /** What of it stands in a walking person's way. It is held with the body: what stands still is not measured again. */
  floor: readonly FloorObstacle[];
}

/** Something that a walking person can't pass through, in plan. */
export interface FloorObstacle {
  owner: string;
  kind: SolidKind;
  polygon: Polygon;
  /** The same as ways and places to stand meet it. */
  body: Body;
  /** Height of its underside where it hangs over free floor, too low for heads; null for what stands on the floor. */
  hangsAt: number | null;
}
