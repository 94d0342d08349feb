import { z } from 'zod/mini';
import { coordinate, degrees, id, known, length, line, listOf, machineSheetSchema, quantity, SIDES } from '../catalog';
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
const cornerSchema = z.strictObject({ id: id(), x: coordinate('Across'), y: coordinate('Down') });

const openingSchema = z.strictObject({
  id: id(),
  kind: z.enum(['door', 'double-door', 'cased-opening', 'pass-window', 'window']),
  /** The wall: id of the corner where it begins. */
  wall: id(),
  from: length('From the start of the wall to the near edge of the opening'),
  width: length('Clear width', 50),
  height: length('Clear height', 50),
  sill: length('Underside above the floor; 0 for a door'),
  swing: z.enum(['in', 'out', 'none']),
  /** The edge that has the hinges, as met when walking the wall from its start. */
  hinge: z.enum(['start', 'end']),
});

const columnSchema = z.strictObject({
  id: id(),
  x: coordinate('Centre, across'),
  y: coordinate('Centre, down'),
  width: length('Width', 10),
  depth: length('Depth', 10),
  rotationDeg: degrees('Rotation'),
});

const floorDrainSchema = z.strictObject({
  id: id(),
  kind: z.enum(['floor-drain', 'floor-sink']),
  x: coordinate('Centre, across'),
  y: coordinate('Centre, down'),
  size: length('Width of the grate', 20, 2000),
  waste: floorWasteSchema,
});

const stubSchema = z.strictObject({
  id: id(),
  kind: z.enum(['cold-water', 'hot-water', 'power', 'duct-exit']),
  x: coordinate('Across'),
  y: coordinate('Down'),
  z: length('Above the floor'),
});

const roomSchema = z.strictObject({
  name: line('Name of the room'),
  outline: listOf(cornerSchema, 3, 200),
  ceilingHeight: z.nullable(length('Finished ceiling above the floor', 1000, 20_000)),
  /** Direction of north on the paper: 0 is up, clockwise. */
  northDeg: degrees('North'),
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
  x: coordinate('Centre, across'),
  y: coordinate('Centre, down'),
  rotationDeg: degrees('Rotation; at 0 the front looks down the paper'),
  /** Where its controls are fitted: one of the positions on its data sheet. */
  controls: id(),
  /** Electrical variant on its data sheet; null while it is not decided. */
  electrical: z.nullable(id()),
  hookUp: hookUpSchema,
});

const alongTable = {
  /** Along the rack centre line, from the joint (or the start of a free table) to the fitting's centre. */
  at: length('From the joint to the centre, along the table'),
  length: length('Length along the table', 10),
};

const fittingSchema = z.discriminatedUnion('kind', [
  z.strictObject({ id: id(), kind: z.literal('drop-off'), ...alongTable }),
  z.strictObject({ id: id(), kind: z.literal('scrap'), ...alongTable, width: length('Across the table', 10), ...troughSchema }),
  z.strictObject({
    id: id(),
    kind: z.literal('sink'),
    ...alongTable,
    width: length('Across the table', 10),
    bowlDepth: length('Depth of the bowl', 10, 1000),
    /** A spray hose hangs over it: it is the pre-rinse. */
    spray: z.boolean(),
    ...bowlSchema,
  }),
  z.strictObject({ id: id(), kind: z.literal('landing'), ...alongTable }),
  z.strictObject({
    id: id(),
    kind: z.literal('overshelf'),
    ...alongTable,
    depth: length('Depth from the back edge', 10),
    height: length('Underside above the floor'),
  }),
]);

/** One straight stretch of a table. The turn is made before the stretch, clockwise on the paper, walking away from the joint. */
const legSchema = z.strictObject({
  length: length('Length along the rack centre line', 10),
  turnDeg: quantity(-135, 135, { unit: 'deg', text: 'Turn before this stretch; 0 on the first' }),
});

const tablePlaceSchema = z.discriminatedUnion('kind', [
  /** Joined to a machine side; the table follows the machine. */
  z.strictObject({
    kind: z.literal('joined'),
    machine: id(),
    side: z.enum(SIDES),
    gap: quantity(-500, 2000, { unit: 'mm', text: 'Gap between table and machine; below 0 they overlap' }),
    offset: quantity(-2000, 2000, {
      unit: 'mm',
      text: 'Rack centre line of the table from that of the door; positive to the right of a person walking out of the machine',
    }),
    skewDeg: quantity(-45, 45, { unit: 'deg', text: 'Angle off square, clockwise' }),
  }),
  /** Free in the room: the start of its rack centre line and the direction it runs in (0 is to the right, clockwise). */
  z.strictObject({ kind: z.literal('free'), x: coordinate('Across'), y: coordinate('Down'), headingDeg: degrees('Heading') }),
]);

const deckSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('fall'),
    jointHeight: z.nullable(length('Deck height at the joint')),
    fall: z.nullable(
      quantity(-0.5, 0.5, {
        unit: 'ratio',
        text: 'Height per length, positive when water runs toward the machine',
      }),
    ),
  }),
  /** Surveyed: deck heights at the joint, at each turn and at the far end. */
  z.strictObject({ kind: z.literal('heights'), heights: listOf(z.nullable(length('Deck height')), 2, 20) }),
]);

const tableSchema = z.strictObject({
  id: id(),
  role: z.enum(['soiled', 'clean']),
  place: tablePlaceSchema,
  legs: listOf(legSchema, 1, 12),
  depth: length('Front edge to back edge', 100, 3000),
  /** From the rack centre line to the edge where people stand. */
  rackLineFromEdge: length('Rack centre line from the operator edge'),
  /** The side where people stand, walking away from the joint. */
  operatorSide: z.enum(['left', 'right']),
  backsplash: length('Height of the backsplash above the deck; 0 for none', 0, 2000),
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
  name: line('Own name; empty for the usual one'),
  x: coordinate('Centre, across'),
  y: coordinate('Centre, down'),
  rotationDeg: degrees('Rotation; at 0 its front looks down the paper'),
  width: length('Left to right', 10, 20_000),
  depth: length('Back to front', 10, 20_000),
  height: length('Height', 1, 10_000),
  /** What ware it holds; decides whether it can be drop-off or clean storage. */
  ware: z.enum(['soiled', 'clean', 'none']),
  clearBelow: z.nullable(length('Free height under it, above the floor', 0, 2000)),
  /** Sealed to what stands beside and behind it. */
  sealed: z.nullable(z.boolean()),
  /** Bowls and boards, where it is a sink whose make is known. */
  basins: z.nullable(basinsSchema),
});

const hoodSchema = z.strictObject({
  id: id(),
  x: coordinate('Centre, across'),
  y: coordinate('Centre, down'),
  rotationDeg: degrees('Rotation'),
  width: length('Inside, left to right', 100, 20_000),
  depth: length('Inside, back to front', 100, 20_000),
  lipHeight: z.nullable(length('Lower lip above the floor')),
  height: length('Height of the hood body', 50, 5000),
  exhaust: known('airflow', 'Airflow that the hood draws', 100),
  /** Air blown into the hood itself: it is no part of what the hood takes out of the room. */
  cavityAir: known('airflow', 'Air blown into the hood itself; 0 for none', 100),
});

const runSchema = z.strictObject({
  id: id(),
  /** The machine whose collar it begins at. */
  machine: id(),
  /** The way after the collar, point by point, to the open air. */
  points: listOf(z.strictObject({ x: coordinate('Across'), y: coordinate('Down'), z: length('Above the floor') }), 1, 60),
  diameter: length('Inside diameter', 25, 2000),
  fan: z.nullable(
    z.strictObject({
      /** Along the run from the collar. */
      at: length('From the collar along the run'),
      attitude: z.enum(['upright', 'on-side']),
      drainHole: z.nullable(z.boolean()),
      /** The way of its cord to the machine; null when it has not been measured. */
      cordWay: z.nullable(length('Way of the cord from the fan to the machine')),
    }),
  ),
  outlet: z.enum(['wall', 'roof']),
  duct: ductSchema,
});

// ---------------------------------------------------------------- demand, supply, order, title

const demandSchema = z.strictObject({
  mealsPerDay: z.nullable(quantity(0, 1_000_000, { unit: 'count', text: 'Meals a day' })),
  peakMeals: z.nullable(quantity(0, 1_000_000, { unit: 'count', text: 'Meals in the peak' })),
  peakMinutes: z.nullable(quantity(1, 1440, { unit: 'count', text: 'Length of the peak, minutes' })),
  piecesPerMeal: z.nullable(quantity(0, 100, { unit: 'count', text: 'Pieces of ware a meal' })),
  piecesPerRack: z.nullable(quantity(1, 1000, { unit: 'count', text: 'Pieces a rack' })),
  hoursPerDay: z.nullable(quantity(0, 24, { unit: 'count', text: 'Hours a day that the machine is on' })),
  daysPerYear: z.nullable(quantity(0, 366, { unit: 'count', text: 'Days a year that the machine is on' })),
  rackMass: known('mass', 'A loaded rack', 100),
  restMinutes: z.nullable(quantity(0, 1440, { unit: 'count', text: 'Lighter work after the peak, minutes' })),
  scrapSeconds: z.nullable(quantity(1, 3600, { unit: 's', text: 'Scrapping and pre-rinsing one rack' })),
});

const supplySchema = z.strictObject({
  hotWaterC: z.nullable(quantity(0, 100, { unit: 'C', text: 'Hot water at the stub' })),
  coldWaterC: z.nullable(quantity(0, 100, { unit: 'C', text: 'Cold water at the stub' })),
  flowPressureKpa: z.nullable(quantity(0, 2000, { unit: 'kPa', text: 'Flow pressure at the stub' })),
  voltage: z.nullable(quantity(50, 1000, { unit: 'V', text: 'Voltage' })),
  phase: z.nullable(z.union([z.literal(1), z.literal(3)])),
  /** Between a live wire and the ground: less than between two live wires where the neutral is grounded. */
  toGroundV: z.nullable(quantity(50, 1000, { unit: 'V', text: 'Voltage to ground' })),
});

/** What the quote says. `null`: the quote does not say. */
const orderSchema = z.strictObject({
  reference: line('Number of the quote'),
  configuration: z.nullable(z.enum(['straight', 'corner'])),
  hand: z.nullable(z.enum(['left-to-right', 'right-to-left'])),
  voltage: z.nullable(quantity(50, 1000, { unit: 'V', text: 'Voltage' })),
  phase: z.nullable(z.union([z.literal(1), z.literal(3)])),
  vent: z.nullable(z.enum(['hood', 'direct', 'recovery'])),
  clearOpening: z.nullable(length('Clear door opening', 100, 1500)),
});

const titleSchema = z.strictObject({
  project: line('Project'),
  alternative: line('Alternative'),
  number: line('Drawing number'),
  revision: line('Revision'),
  drawnBy: line('Drawn by'),
  date: line('Date of issue'),
});

/** Choices that change how limits are read, never what was measured. */
const settingsSchema = z.strictObject({
  units: z.enum(['us', 'metric']),
  rackSize: length('Rack, along the line', 300, 700),
  rackPitch: length('Place that one rack takes on a table', 300, 800),
  personWidth: length('Passage that a person needs', 300, 2000),
  aisleWidth: length('Aisle that is wanted between equipment', 300, 3000),
  racksBefore: quantity(0, 20, { unit: 'count', text: 'Racks that must find room before the machine' }),
  racksAfter: quantity(0, 20, { unit: 'count', text: 'Racks that must find room after the machine' }),
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
  sheets: listOf(machineSheetSchema, 0, 50),
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
