import { z } from 'zod/mini';
import { coordinate, dataSheetSchema, degrees, id, known, length, line, listOf, quantity, SIDES } from '../catalog';
import {
  airSchema,
  basinsSchema,
  bowlSchema,
  codesSchema,
  ductSchema,
  finishSchema,
  floorWasteSchema,
  hookUpSchema,
  makeSchema,
  pipesSchema,
  tariffSchema,
  troughSchema,
} from './siteSchema';

/**
 * The plan document, version 4: everything that the user has said and nothing that can be derived.
 * Lengths in millimetres; x to the right, y down the paper, z up; rotations clockwise in degrees.
 * `null` means "not known yet": a check that needs the value asks for it.
 */

export const PLAN_FORMAT = 'rackway-plan';
export const PLAN_VERSION = 4;

// ---------------------------------------------------------------- the room

/** A corner of the room. The wall that runs from it to the next corner bears the corner's id. */
const cornerSchema = z.strictObject({ id: id(), x: coordinate(), y: coordinate() });

const openingSchema = z.strictObject({
  id: id(),
  kind: z.enum(['door', 'double-door', 'cased-opening', 'pass-window', 'window']),
  /** The wall: id of the corner where it begins. */
  wall: id(),
  /** To the edge that is nearer to the start of the wall. */
  from: length(),
  width: length(50),
  height: length(50),
  /** Underside above the floor. */
  sill: length(),
  swing: z.enum(['in', 'out', 'none']),
  /** The edge that has the hinges, as met when walking the wall from its start. */
  hinge: z.enum(['start', 'end']),
});

const columnSchema = z.strictObject({
  id: id(),
  x: coordinate(),
  y: coordinate(),
  width: length(10),
  depth: length(10),
  rotationDeg: degrees(),
});

const floorDrainSchema = z.strictObject({
  id: id(),
  kind: z.enum(['floor-drain', 'floor-sink']),
  x: coordinate(),
  y: coordinate(),
  size: length(20, 2000),
  waste: floorWasteSchema,
});

const stubSchema = z.strictObject({
  id: id(),
  kind: z.enum(['cold-water', 'hot-water', 'power', 'duct-exit']),
  x: coordinate(),
  y: coordinate(),
  z: length(),
});

const roomSchema = z.strictObject({
  name: line(),
  outline: listOf(cornerSchema, 3, 200),
  ceilingHeight: z.nullable(length(1000, 20_000)),
  /** Direction of north on the paper: 0 is up, clockwise. */
  northDeg: degrees(),
  openings: listOf(openingSchema, 0, 200),
  columns: listOf(columnSchema, 0, 200),
  floorDrains: listOf(floorDrainSchema, 0, 200),
  stubs: listOf(stubSchema, 0, 200),
});

// ---------------------------------------------------------------- the line

const machineSchema = z.strictObject({
  id: id(),
  /** Data sheet: one in this plan, or a family of the catalogue. */
  sheet: id(),
  /** Centre of the footprint. */
  x: coordinate(),
  y: coordinate(),
  /** At 0 its front looks down the paper. */
  rotationDeg: degrees(),
  /** Where its controls are fitted: one of the positions on its data sheet. */
  controls: id(),
  /** Electrical variant on its data sheet; null while it is not decided. */
  electrical: z.nullable(id()),
  hookUp: hookUpSchema,
});

const alongTable = {
  /** Along the rack centre line, from the joint (or the start of a free table) to the fitting's centre. */
  at: length(),
  length: length(10),
};

const fittingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ id: id(), kind: z.literal('drop-off'), ...alongTable }),
  z.strictObject({ id: id(), kind: z.literal('scrap'), ...alongTable, width: length(10), ...troughSchema }),
  z.strictObject({
    id: id(),
    kind: z.literal('sink'),
    ...alongTable,
    width: length(10),
    bowlDepth: length(10, 1000),
    /** A spray hose hangs over it: it is the pre-rinse. */
    spray: z.boolean(),
    ...bowlSchema,
  }),
  z.strictObject({ id: id(), kind: z.literal('landing'), ...alongTable }),
  z.strictObject({
    id: id(),
    kind: z.literal('overshelf'),
    ...alongTable,
    /** From the back edge. */
    depth: length(10),
    /** Underside above the floor. */
    height: length(),
  }),
]);

/** One straight stretch of a table. The turn is made before the stretch, clockwise on the paper, walking away from the joint. */
const legSchema = z.strictObject({
  length: length(10),
  turnDeg: quantity(-135, 135, { unit: 'deg' }),
});

const tablePlaceSchema = z.discriminatedUnion('kind', [
  /** Joined to a machine side; the table follows the machine. */
  z.strictObject({
    kind: z.literal('joined'),
    machine: id(),
    side: z.enum(SIDES),
    /** Below 0 table and machine overlap. */
    gap: quantity(-500, 2000, { unit: 'mm' }),
    /** Rack centre line from that of the door: positive to the right of a person walking out of the machine. */
    offset: quantity(-2000, 2000, { unit: 'mm' }),
    /** Off square, clockwise. */
    skewDeg: quantity(-45, 45, { unit: 'deg' }),
  }),
  /** Free in the room: the start of its rack centre line and the direction it runs in (0 is to the right, clockwise). */
  z.strictObject({ kind: z.literal('free'), x: coordinate(), y: coordinate(), headingDeg: degrees() }),
]);

const deckSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('fall'),
    jointHeight: z.nullable(length()),
    /** Height per length: positive when water runs toward the machine. */
    fall: z.nullable(quantity(-0.5, 0.5, { unit: 'ratio' })),
  }),
  /** Surveyed: deck heights at the joint, at each turn and at the far end. */
  z.strictObject({ kind: z.literal('heights'), heights: listOf(z.nullable(length()), 2, 20) }),
]);

const tableSchema = z.strictObject({
  id: id(),
  role: z.enum(['soiled', 'clean']),
  place: tablePlaceSchema,
  legs: listOf(legSchema, 1, 12),
  depth: length(100, 3000),
  /** From the rack centre line to the edge where people stand. */
  rackLineFromEdge: length(),
  /** The side where people stand, walking away from the joint. */
  operatorSide: z.enum(['left', 'right']),
  backsplash: length(0, 2000),
  deck: deckSchema,
  make: makeSchema,
  fittings: listOf(fittingSchema, 0, 50),
});

// ---------------------------------------------------------------- things, hood, run

export const THING_KINDS = [
  'three-compartment-sink',
  'hand-sink',
  'shelving',
  'cart',
  'bin',
  'work-table',
  'panel-board',
  'other',
] as const;

const thingSchema = z.strictObject({
  id: id(),
  kind: z.enum(THING_KINDS),
  name: line(),
  x: coordinate(),
  y: coordinate(),
  /** At 0 its front looks down the paper. */
  rotationDeg: degrees(),
  width: length(10, 20_000),
  depth: length(10, 20_000),
  height: length(1, 10_000),
  /** What ware it holds; decides whether it can be drop-off or clean storage. */
  ware: z.enum(['soiled', 'clean', 'none']),
  clearBelow: z.nullable(length(0, 2000)),
  /** Sealed to what stands beside and behind it. */
  sealed: z.nullable(z.boolean()),
  /** Bowls and boards, where it is a sink whose make is known. */
  basins: z.nullable(basinsSchema),
});

const hoodSchema = z.strictObject({
  id: id(),
  x: coordinate(),
  y: coordinate(),
  rotationDeg: degrees(),
  width: length(100, 20_000),
  depth: length(100, 20_000),
  lipHeight: z.nullable(length()),
  height: length(50, 5000),
  exhaust: known('airflow', 100),
  /** Air blown into the hood itself: it is no part of what the hood takes out of the room. */
  cavityAir: known('airflow', 100),
});

const runSchema = z.strictObject({
  id: id(),
  /** The machine whose collar it begins at. */
  machine: id(),
  /** The way after the collar, point by point, to the open air. */
  points: listOf(z.strictObject({ x: coordinate(), y: coordinate(), z: length() }), 1, 60),
  diameter: length(25, 2000),
  fan: z.nullable(
    z.strictObject({
      /** Along the run from the collar. */
      at: length(),
      attitude: z.enum(['upright', 'on-side']),
      drainHole: z.nullable(z.boolean()),
      /** The way of its cord to the machine; null when it has not been measured. */
      cordWay: z.nullable(length()),
    }),
  ),
  outlet: z.enum(['wall', 'roof']),
  duct: ductSchema,
});

// ---------------------------------------------------------------- demand, supply, order, title

const demandSchema = z.strictObject({
  mealsPerDay: z.nullable(quantity(0, 1_000_000, { unit: 'count' })),
  peakMeals: z.nullable(quantity(0, 1_000_000, { unit: 'count' })),
  peakMinutes: z.nullable(quantity(1, 1440, { unit: 'count' })),
  piecesPerMeal: z.nullable(quantity(0, 100, { unit: 'count' })),
  piecesPerRack: z.nullable(quantity(1, 1000, { unit: 'count' })),
  hoursPerDay: z.nullable(quantity(0, 24, { unit: 'count' })),
  daysPerYear: z.nullable(quantity(0, 366, { unit: 'count' })),
  rackMass: known('mass', 100),
  restMinutes: z.nullable(quantity(0, 1440, { unit: 'count' })),
  scrapSeconds: z.nullable(quantity(1, 3600, { unit: 's' })),
});

const supplySchema = z.strictObject({
  hotWaterC: z.nullable(quantity(0, 100, { unit: 'C' })),
  coldWaterC: z.nullable(quantity(0, 100, { unit: 'C' })),
  flowPressureKpa: z.nullable(quantity(0, 2000, { unit: 'kPa' })),
  voltage: z.nullable(quantity(50, 1000, { unit: 'V' })),
  phase: z.nullable(z.union([z.literal(1), z.literal(3)])),
  /** Between a live wire and the ground: less than between two live wires where the neutral is grounded. */
  toGroundV: z.nullable(quantity(50, 1000, { unit: 'V' })),
});

/** What the quote says. `null`: the quote does not say. */
const orderSchema = z.strictObject({
  reference: line(),
  configuration: z.nullable(z.enum(['straight', 'corner'])),
  hand: z.nullable(z.enum(['left-to-right', 'right-to-left'])),
  voltage: z.nullable(quantity(50, 1000, { unit: 'V' })),
  phase: z.nullable(z.union([z.literal(1), z.literal(3)])),
  vent: z.nullable(z.enum(['hood', 'direct', 'recovery'])),
  clearOpening: z.nullable(length(100, 1500)),
});

const titleSchema = z.strictObject({
  project: line(),
  alternative: line(),
  number: line(),
  revision: line(),
  drawnBy: line(),
  date: line(),
});

/** Choices that change how limits are read, never what was measured. */
const settingsSchema = z.strictObject({
  units: z.enum(['us', 'metric']),
  rackSize: length(300, 700),
  rackPitch: length(300, 800),
  personWidth: length(300, 2000),
  aisleWidth: length(300, 3000),
  racksBefore: quantity(0, 20, { unit: 'count' }),
  racksAfter: quantity(0, 20, { unit: 'count' }),
});

export const planSchema = z.strictObject({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  title: titleSchema,
  room: roomSchema,
  machines: listOf(machineSchema, 0, 20),
  tables: listOf(tableSchema, 0, 60),
  things: listOf(thingSchema, 0, 500),
  hoods: listOf(hoodSchema, 0, 20),
  runs: listOf(runSchema, 0, 20),
  demand: demandSchema,
  supply: supplySchema,
  order: orderSchema,
  air: airSchema,
  finish: finishSchema,
  pipes: pipesSchema,
  tariff: tariffSchema,
  codes: codesSchema,
  settings: settingsSchema,
  /** Data sheets of the user's own, in this plan. */
  sheets: listOf(dataSheetSchema, 0, 50),
});

export type Plan = z.infer<typeof planSchema>;
export type Room = Plan['room'];
export type Corner = Room['outline'][number];
export type Opening = Room['openings'][number];
export type Column = Room['columns'][number];
export type FloorDrain = Room['floorDrains'][number];
export type Stub = Room['stubs'][number];
export type Machine = Plan['machines'][number];
export type Table = Plan['tables'][number];
export type TablePlace = Table['place'];
export type Fitting = Table['fittings'][number];
export type Thing = Plan['things'][number];
export type ThingKind = (typeof THING_KINDS)[number];
export type Hood = Plan['hoods'][number];
export type Run = Plan['runs'][number];
export type Supply = Plan['supply'];
export type Order = Plan['order'];
export type Settings = Plan['settings'];
export type Codes = Plan['codes'];
