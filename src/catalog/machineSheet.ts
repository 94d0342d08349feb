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
  name: line('What people call this position'),
  side,
  from: length('Start of the strip along its side: from the left edge on front and back, from the back edge on left and right'),
  to: length('End of the strip along its side'),
  zFrom: length('Lower edge of the controls above the floor'),
  zTo: length('Upper edge of the controls above the floor'),
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
  x: coordinate('From the left edge'),
  y: coordinate('From the back edge'),
  z: length('Above the floor'),
  size: length('Nominal diameter; 0 for wires', 0, 2000),
  note: line('What the installer must know', 300),
});

const electricalSchema = z.strictObject({
  id: id(),
  voltage: quantity(50, 1000, { unit: 'V', text: 'Nominal voltage' }),
  phase: z.union([z.literal(1), z.literal(3)]),
  powerKw: quantity(0, 200, { unit: 'kW', text: 'Rated power' }),
  currentA: quantity(0, 500, { unit: 'A', text: 'Rated current' }),
});

/** How the vapour leaves. The limits of a direct vent belong to the machine. */
const ventSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('hood') }),
  z.strictObject({
    kind: z.literal('direct'),
    maxEquivalentLength: length('Longest equivalent length of the run'),
    elbowAllowance: length('What one 90° elbow counts as'),
    cordLength: length('Length of the fan cord that comes with the machine'),
    ductDiameter: length('Duct that fits the collar', 25, 1000),
    /** What the machine must be able to send through it, and what its own fan does at each airflow; none: it has no fan of its own. */
    airflow: known('airflow', 'Airflow that the vent needs', 20),
    fanCurve: listOf(
      z.strictObject({
        airflow: quantity(0, 20, { of: 'airflow', text: 'Airflow' }),
        pressure: quantity(0, 5000, { of: 'draught', text: 'Static pressure of the fan' }),
      }),
      0,
      60,
    ),
  }),
  z.strictObject({
    kind: z.literal('recovery'),
    /** The box that takes the heat back, in the machine frame. */
    box: z.strictObject({
      x: coordinate('Left edge of the box'),
      y: coordinate('Back edge of the box'),
      width: length('Width of the box'),
      depth: length('Depth of the box'),
      zFrom: length('Underside of the box'),
      zTo: length('Top of the box'),
    }),
    /** Of the heat that the rinse needs, what the recovery gives. */
    recovered: known('share', 'Share of the rinse’s heat that is recovered', 1),
  }),
]);

export const machineSheetSchema = z.strictObject({
  id: id(),
  name: line('Name of the machine'),
  /** One sentence on what makes this machine different in the room. */
  summary: line('What makes it different in the room', 400),
  width: length('Footprint, left to right', 300, 3000),
  depth: length('Footprint, back to front', 300, 3000),
  height: length('Top of the machine with its doors shut', 500, 4000),
  /** Sides that have a door. A door on a side without a table stays shut, its track closed. */
  doors: listOf(side, 1),
  /** Where the rack's centre line passes each door, along that side. */
  rackLine: z.strictObject({
    left: length('From the back edge'),
    right: length('From the back edge'),
    front: length('From the left edge'),
  }),
  deckHeight: length('Height of the rack track above the floor', 300, 1500),
  clearOpening: length('Clear height of the door opening', 100, 1500),
  /** The highest point of anything that rises with the doors, doors open, above the floor. */
  doorLiftHeight: length('Top of the doors when open, above the floor', 500, 4000),
  joint: z.strictObject({
    maxGap: length('Widest gap between table and machine that silicone seals', 0, 100),
    maxOffset: length('Largest sideways offset of the rack centre lines', 0, 100),
    maxAngleDeg: quantity(0, 10, { unit: 'deg', text: 'Largest angle off square' }),
    maxDeckStep: length('Largest step between the table deck and the track', 0, 100),
  }),
  controls: listOf(controlsSchema, 1),
  /** Whether the controls can be moved to another position on site, or only in the order. */
  controlsChange: z.enum(['on-site', 'factory']),
  connections: listOf(connectionSchema),
  /** Free space that service needs on each side without a table, and above the doors. */
  clearances: z.strictObject({
    left: length('Left'),
    right: length('Right'),
    front: length('Front'),
    back: length('Back'),
    above: length('Above the open doors'),
  }),
  sanitizing: z.enum(['hot-water', 'chemical']),
  waterFeed: z.enum(['hot', 'cold']),
  cycle: z.strictObject({
    washS: quantity(0, 3600, { unit: 's', text: 'Wash' }),
    rinseS: quantity(0, 3600, { unit: 's', text: 'Rinse' }),
    dwellS: quantity(0, 3600, { unit: 's', text: 'Dwell and any hold at the end' }),
    loadS: quantity(0, 600, { unit: 's', text: 'Changing racks' }),
  }),
  temperatures: z.strictObject({
    washC: quantity(0, 100, { unit: 'C', text: 'Wash, minimum' }),
    rinseC: quantity(0, 100, { unit: 'C', text: 'Final rinse at the manifold, minimum' }),
    supplyC: quantity(0, 100, { unit: 'C', text: 'Supply water, minimum' }),
  }),
  /** One temperature for wash and rinse, or a hotter rinse: the food code tells the two apart. */
  rinseKind: z.enum(['single-temperature', 'dual-temperature']),
  /** Flow pressure of the final rinse on the data plate; null: the plate is not known. */
  rinsePressure: z.nullable(
    z.strictObject({
      least: quantity(0, 1_000_000, { of: 'pressure', text: 'Flow pressure of the rinse, least' }),
      most: quantity(0, 1_000_000, { of: 'pressure', text: 'Flow pressure of the rinse, most' }),
    }),
  ),
  /** Tank of the wash water; null where it washes with fresh water. */
  tank: z.nullable(
    z.strictObject({
      volume: quantity(0.001, 1, { of: 'volume', text: 'Wash tank' }),
      heater: quantity(0, 100_000, { of: 'power', text: 'Heater of the tank' }),
    }),
  ),
  /** Heater of the final rinse; null where there is none in the machine. */
  booster: known('power', 'Booster in the machine', 200_000),
  drainFlow: known('water-flow', 'Flow of the drain while the machine empties', 0.1),
  rinseWaterL: quantity(0, 100, { unit: 'L', text: 'Water for one rack' }),
  electrical: listOf(electricalSchema, 1),
  vent: ventSchema,
  /** What is done on site to turn the machine from one configuration to the other, step by step. */
  conversion: z.strictObject({
    toCorner: listOf(line('Step', 400), 1),
    toStraight: listOf(line('Step', 400), 1),
  }),
});

export type MachineSheet = z.infer<typeof machineSheetSchema>;
export type ControlsPosition = z.infer<typeof controlsSchema>;
export type Connection = z.infer<typeof connectionSchema>;
export type ConnectionKind = (typeof CONNECTION_KINDS)[number];
export type Vent = MachineSheet['vent'];
