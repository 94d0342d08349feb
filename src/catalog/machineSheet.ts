import { z } from 'zod/mini';
import { coordinate, id, known, length, line, listOf, noted, quantity } from './fields';

/**
 * The data sheet of a door-type machine: what its maker would state of it, in its own frame
 * (origin at the back left corner of the footprint, x to the right for a person facing the front,
 * y from back to front, z up; millimetres). Limits that vary from machine to machine stand here
 * and nowhere else.
 *
 * The sentence of each field is its label on the form too: what stands before a colon names it, what follows explains it.
 */

export const SIDES = ['left', 'right', 'front', 'back'] as const;
/** A side of a machine, as seen by a person facing its front. */
export type Side = (typeof SIDES)[number];

const side = noted(z.enum(SIDES), 'Side');

/** Where the controls may be fitted: a strip of one side between two heights. */
export const controlsSchema = z.strictObject({
  id: id(),
  name: line('Name: what people call this position'),
  side,
  from: length('Begins along its side: from the left edge on front and back, from the back edge on left and right'),
  to: length('Ends along its side: from the same edge'),
  zFrom: length('Lower edge: of the controls above the floor'),
  zTo: length('Upper edge: of the controls above the floor'),
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
  kind: noted(z.enum(CONNECTION_KINDS), 'What it is'),
  x: coordinate('From the left edge'),
  y: coordinate('From the back edge'),
  z: length('Above the floor'),
  size: length('Nominal size: diameter; 0 for wires', 0, 2000),
  note: line('Note: what the installer must know', 300),
});

const electricalSchema = z.strictObject({
  id: id(),
  voltage: quantity(50, 1000, { unit: 'V', text: 'Nominal voltage' }),
  phase: noted(z.union([z.literal(1), z.literal(3)]), 'Phase'),
  powerKw: quantity(0, 200, { unit: 'kW', text: 'Rated power' }),
  currentA: quantity(0, 500, { unit: 'A', text: 'Rated current' }),
});

/** How the vapour leaves. The limits of a direct vent belong to the machine. */
const ventSchema = noted(
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('hood') }),
    z.strictObject({
      kind: z.literal('direct'),
      maxEquivalentLength: length('Longest run: its equivalent length'),
      elbowAllowance: length('What one 90° elbow counts as'),
      cordLength: length('Fan cord: length of the one that comes with the machine'),
      ductDiameter: length('Duct that fits the collar', 25, 1000),
      /** What the machine must be able to send through it, and what its own fan does at each airflow; none: it has no fan of its own. */
      airflow: known('airflow', 'Airflow that the vent needs', 20),
      fanCurve: listOf(
        z.strictObject({
          airflow: quantity(0, 20, { of: 'airflow', text: 'Airflow' }),
          pressure: quantity(0, 5000, { of: 'draught', text: 'Static pressure: what the fan gives at this airflow' }),
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
      recovered: known('share', 'Heat recovered: share of what the rinse needs', 1),
      /** Electric, and listed to UL 921 with a condensing system of its own. */
      listedCondensing: noted(z.nullable(z.boolean()), 'Listed as condensing: electric, to UL 921'),
      /** What it still gives to the room while it works. */
      sensible: known('power', 'Dry heat to the room', 100_000),
      latent: known('power', 'Moist heat to the room', 100_000),
    }),
  ]),
  'Vapour leaves by',
);

export const machineSheetSchema = z.strictObject({
  id: id(),
  name: line('Name of the machine'),
  /** One sentence on what makes this machine different in the room. */
  summary: line('Summary: what makes it different in the room', 400),
  width: length('Footprint, left to right', 300, 3000),
  depth: length('Footprint, back to front', 300, 3000),
  height: length('Height: top of the machine with its doors shut', 500, 4000),
  /** Sides that have a door. A door on a side without a table stays shut, its track closed. */
  doors: listOf(side, 1),
  /** Where the rack's centre line passes each door, along that side. */
  rackLine: z.strictObject({
    left: length('Rack line at the left: from the back edge'),
    right: length('Rack line at the right: from the back edge'),
    front: length('Rack line at the front: from the left edge'),
  }),
  deckHeight: length('Rack track above the floor', 300, 1500),
  clearOpening: length('Door opening: its clear height', 100, 1500),
  /** The highest point of anything that rises with the doors, doors open, above the floor. */
  doorLiftHeight: length('Top of the open doors: above the floor', 500, 4000),
  joint: z.strictObject({
    maxGap: length('Widest gap: between table and machine, as silicone seals it', 0, 100),
    maxOffset: length('Largest offset: of the rack centre lines, sideways', 0, 100),
    maxAngleDeg: quantity(0, 10, { unit: 'deg', text: 'Largest angle: off square' }),
    maxDeckStep: length('Largest step: between the table deck and the track', 0, 100),
  }),
  controls: listOf(controlsSchema, 1),
  /** Whether the controls can be moved to another position on site, or only in the order. */
  controlsChange: noted(z.enum(['on-site', 'factory']), 'Position changed: on site, or only in the order'),
  connections: listOf(connectionSchema),
  /** Free space that service needs on each side without a table, and above the doors. */
  clearances: z.strictObject({
    left: length('Free at the left'),
    right: length('Free at the right'),
    front: length('Free at the front'),
    back: length('Free at the back'),
    above: length('Free above the open doors'),
  }),
  sanitizing: noted(z.enum(['hot-water', 'chemical']), 'Sanitised by'),
  waterFeed: noted(z.enum(['hot', 'cold']), 'Water that it takes'),
  cycle: z.strictObject({
    washS: quantity(0, 3600, { unit: 's', text: 'Wash' }),
    rinseS: quantity(0, 3600, { unit: 's', text: 'Rinse' }),
    dwellS: quantity(0, 3600, { unit: 's', text: 'Dwell: and any hold at the end' }),
    loadS: quantity(0, 600, { unit: 's', text: 'Changing racks' }),
  }),
  temperatures: z.strictObject({
    washC: quantity(0, 100, { unit: 'C', text: 'Wash, least' }),
    rinseC: quantity(0, 100, { unit: 'C', text: 'Final rinse, least: at the manifold' }),
    supplyC: quantity(0, 100, { unit: 'C', text: 'Supply water, least' }),
  }),
  /** One temperature for wash and rinse, or a hotter rinse: the food code tells the two apart. */
  rinseKind: noted(z.enum(['single-temperature', 'dual-temperature']), 'Kind of rinse: as hot as the wash, or hotter'),
  /** Flow pressure of the final rinse on the data plate; null: the plate is not known. */
  rinsePressure: z.nullable(
    noted(
      z.strictObject({
        least: quantity(0, 1_000_000, { of: 'pressure', text: 'Rinse pressure, least: while it flows' }),
        most: quantity(0, 1_000_000, { of: 'pressure', text: 'Rinse pressure, most: while it flows' }),
      }),
      'Rinse pressure known',
    ),
  ),
  /** Tank of the wash water; null where it washes with fresh water. */
  tank: z.nullable(
    noted(
      z.strictObject({
        volume: quantity(0.001, 1, { of: 'volume', text: 'Tank holds' }),
        heater: quantity(0, 100_000, { of: 'power', text: 'Tank heater' }),
      }),
      'Wash tank',
    ),
  ),
  /** In the machine or standing apart, as its hook-up says. */
  booster: known('power', 'Booster: heater of the final rinse', 200_000),
  drainFlow: known('water-flow', 'Drain flow: while the machine empties', 0.1),
  /** While it is on and ready and washes nothing. */
  idle: known('power', 'Idle: power while it is ready and washes nothing', 50_000),
  /** Built in: in each wash and rinse tank, and at the rinse manifold or in the tank of the sanitiser. */
  thermometers: noted(z.nullable(z.boolean()), 'Thermometers: in each tank, and at the final rinse'),
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
