import { z } from 'zod/mini';
import { coordinate, id, known, length, line, listOf, quantity } from './fields';

/**
 * The data sheet of a door-type machine: what its maker would state of it, in its own frame
 * (origin at the back left corner of the footprint, x to the right for a person facing the front,
 * y from back to front, z up; millimetres). Limits that vary from machine to machine stand here
 * and nowhere else.
 */

export const SIDES = ['left', 'right', 'front', 'back'] as const;
/** A side of a machine, as seen by a person facing its front. */
export type Side = (typeof SIDES)[number];

const side = z.enum(SIDES);

/** Where the controls may be fitted: a strip of one side between two heights. */
export const controlsSchema = z.strictObject({
  id: id(),
  name: line(),
  side,
  /** From the left edge on front and back, from the back edge on left and right. */
  from: length(),
  to: length(),
  zFrom: length(),
  zTo: length(),
});

export const CONNECTION_KINDS = [
  'cold-water',
  'hot-water',
  'drain',
  'power',
  'vent-signal',
  'rinse-aid-signal',
  'detergent-signal',
  'collar',
] as const;

export const connectionSchema = z.strictObject({
  id: id(),
  kind: z.enum(CONNECTION_KINDS),
  x: coordinate(),
  y: coordinate(),
  z: length(),
  size: length(0, 2000),
  note: line(300),
});

const electricalSchema = z.strictObject({
  id: id(),
  voltage: quantity(50, 1000, { unit: 'V' }),
  phase: z.union([z.literal(1), z.literal(3)]),
  powerKw: quantity(0, 200, { unit: 'kW' }),
  currentA: quantity(0, 500, { unit: 'A' }),
});

/** How the vapour leaves. The limits of a direct vent belong to the machine. */
const ventSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('hood') }),
  z.strictObject({
    kind: z.literal('direct'),
    maxEquivalentLength: length(),
    elbowAllowance: length(),
    cordLength: length(),
    ductDiameter: length(25, 1000),
    /** What the machine must be able to send through it, and what its own fan does at each airflow; none: it has no fan of its own. */
    airflow: known('airflow', 20),
    fanCurve: listOf(
      z.strictObject({
        airflow: quantity(0, 20, { of: 'airflow' }),
        pressure: quantity(0, 5000, { of: 'air-pressure' }),
      }),
      0,
      60,
    ),
  }),
  z.strictObject({
    kind: z.literal('recovery'),
    /** The box that takes the heat back, in the machine frame. */
    box: z.strictObject({
      x: coordinate(),
      y: coordinate(),
      width: length(),
      depth: length(),
      zFrom: length(),
      zTo: length(),
    }),
    /** Of the heat that the rinse needs, what the recovery gives. */
    recovered: known('share', 1),
    /** Electric, and listed to UL 921 with a condensing system of its own. */
    listedCondensing: z.nullable(z.boolean()),
    /** What it still gives to the room while it works. */
    sensible: known('power', 100_000),
    latent: known('power', 100_000),
  }),
]);

export const dataSheetSchema = z.strictObject({
  id: id(),
  name: line(),
  /** One sentence on what makes this machine different in the room. */
  summary: line(400),
  width: length(300, 3000),
  depth: length(300, 3000),
  height: length(500, 4000),
  /** Sides that have a door. A door on a side without a table stays shut, its track closed. */
  doors: listOf(side, 1),
  /** Where the rack's centre line passes each door, along that side. */
  rackLine: z.strictObject({
    left: length(),
    right: length(),
    front: length(),
  }),
  deckHeight: length(300, 1500),
  clearOpening: length(100, 1500),
  /** The highest point of anything that rises with the doors, doors open, above the floor. */
  doorLiftHeight: length(500, 4000),
  joint: z.strictObject({
    maxGap: length(0, 100),
    maxOffset: length(0, 100),
    maxAngleDeg: quantity(0, 10, { unit: 'deg' }),
    maxDeckStep: length(0, 100),
  }),
  controls: listOf(controlsSchema, 1),
  /** Whether the controls can be moved to another position on site, or only in the order. */
  controlsChange: z.enum(['on-site', 'factory']),
  connections: listOf(connectionSchema),
  /** Free space that service needs on each side without a table, and above the doors. */
  clearances: z.strictObject({
    left: length(),
    right: length(),
    front: length(),
    back: length(),
    above: length(),
  }),
  sanitizing: z.enum(['hot-water', 'chemical']),
  waterFeed: z.enum(['hot', 'cold']),
  cycle: z.strictObject({
    washS: quantity(0, 3600, { unit: 's' }),
    rinseS: quantity(0, 3600, { unit: 's' }),
    dwellS: quantity(0, 3600, { unit: 's' }),
    loadS: quantity(0, 600, { unit: 's' }),
  }),
  temperatures: z.strictObject({
    washC: quantity(0, 100, { unit: 'C' }),
    rinseC: quantity(0, 100, { unit: 'C' }),
    supplyC: quantity(0, 100, { unit: 'C' }),
  }),
  /** One temperature for wash and rinse, or a hotter rinse: the food code tells the two apart. */
  rinseKind: z.enum(['single-temperature', 'dual-temperature']),
  /** Flow pressure of the final rinse on the data plate; null: the plate is not known. */
  rinsePressure: z.nullable(
    z.strictObject({
      least: quantity(0, 1_000_000, { of: 'pressure' }),
      most: quantity(0, 1_000_000, { of: 'pressure' }),
    }),
  ),
  /** Tank of the wash water; null where it washes with fresh water. */
  tank: z.nullable(
    z.strictObject({
      volume: quantity(0.001, 1, { of: 'volume' }),
      heater: quantity(0, 100_000, { of: 'power' }),
    }),
  ),
  /** In the machine or standing apart, as its hook-up says. */
  booster: known('power', 200_000),
  drainFlow: known('water-flow', 0.1),
  /** While it is on and ready and washes nothing. */
  idle: known('power', 50_000),
  /** Built in: in each wash and rinse tank, and at the rinse manifold or in the tank of the sanitiser. */
  thermometers: z.nullable(z.boolean()),
  rinseWaterL: quantity(0, 100, { unit: 'L' }),
  electrical: listOf(electricalSchema, 1),
  vent: ventSchema,
  /** What is done on site to turn the machine from one configuration to the other, step by step. */
  conversion: z.strictObject({
    toCorner: listOf(line(400), 1),
    toStraight: listOf(line(400), 1),
  }),
});

export type DataSheet = z.infer<typeof dataSheetSchema>;
export type ControlsPosition = z.infer<typeof controlsSchema>;
export type Connection = z.infer<typeof connectionSchema>;
export type ConnectionKind = (typeof CONNECTION_KINDS)[number];
export type Vent = DataSheet['vent'];
