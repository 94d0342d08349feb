import { z } from 'zod/mini';
import { known, length, line, listOf, quantity } from '../catalog';

/**
 * What is known of the building's services and of how things are made: asked for only by figures and checks, so every value
 * may be unknown. SI but for lengths (mm) and temperatures (°C). Each part has its empty value beside it.
 */

const knownLength = (min = 0, max?: number) => z.nullable(length(min, max));
const knownTemperature = () => known('temperature', 120, -60);
const knownFact = () => z.nullable(z.boolean());
const knownSlope = () => z.nullable(quantity(0, 0.5, { unit: 'ratio' }));

// ---------------------------------------------------------------- air of the room, and the building

export const airSchema = z.strictObject({
  roomC: knownTemperature(),
  roomHumidity: known('share', 1),
  /** What is blown in from outside or from the next room, in place of what is drawn out. */
  makeUp: known('airflow', 100),
  makeUpC: knownTemperature(),
  makeUpHumidity: known('share', 1),
  /** General exhaust of the room, beside hoods and runs. */
  roomExhaust: known('airflow', 100),
  outdoorC: knownTemperature(),
  ductAirC: knownTemperature(),
  wallConductance: known('conductance', 20),
  ceilingConductance: known('conductance', 20),
  elevation: z.nullable(length(0, 4_000_000)),
  /** The make-up air starts and runs with the exhaust. */
  interlocked: knownFact(),
  /** The ventilation of the room is designed to take heat and moisture of a machine that has no hood. */
  hoodWaived: knownFact(),
});

export const UNKNOWN_AIR: z.infer<typeof airSchema> = {
  roomC: null,
  roomHumidity: null,
  makeUp: null,
  makeUpC: null,
  makeUpHumidity: null,
  roomExhaust: null,
  outdoorC: null,
  ductAirC: null,
  wallConductance: null,
  ceilingConductance: null,
  elevation: null,
  interlocked: null,
  hoodWaived: null,
};

// ---------------------------------------------------------------- how the room is finished

export const finishSchema = z.strictObject({
  /** Light where ware is washed, 30 in above the floor. */
  light: known('illuminance', 20_000),
  ceilingWashable: knownFact(),
  floorCoved: knownFact(),
  floorSlope: knownSlope(),
  /** Walls, counters and casework that stay where they are, all around. */
  fixedWalls: knownFact(),
});

export const UNKNOWN_FINISH: z.infer<typeof finishSchema> = {
  light: null,
  ceilingWashable: null,
  floorCoved: null,
  floorSlope: null,
  fixedWalls: null,
};

// ---------------------------------------------------------------- what the pipes of the building bring

export const PIPE_MATERIALS = ['copper', 'plastic', 'new-steel', 'old-steel'] as const;

/** Beside temperature and flow pressure: what else is known of the water. */
export const pipesSchema = z.strictObject({
  staticPressure: known('pressure', 2_000_000),
  hardness: known('hardness', 5),
  material: z.nullable(z.enum(PIPE_MATERIALS)),
  bore: knownLength(5, 200),
  heaterPower: known('power', 2_000_000),
  storage: known('volume', 100),
});

export const UNKNOWN_PIPES: z.infer<typeof pipesSchema> = {
  staticPressure: null,
  hardness: null,
  material: null,
  bore: null,
  heaterPower: null,
  storage: null,
};

export const tariffSchema = z.strictObject({
  currency: line(8),
  electricity: known('count', 1000),
  gas: known('count', 1000),
  water: known('count', 10_000),
  waterHeatedBy: z.nullable(z.enum(['electricity', 'gas'])),
  heaterEfficiency: known('share', 1, 0.05),
});

export const UNKNOWN_TARIFF: z.infer<typeof tariffSchema> = {
  currency: '',
  electricity: null,
  gas: null,
  water: null,
  waterHeatedBy: null,
  heaterEfficiency: null,
};

// ---------------------------------------------------------------- which rule counts where rules differ

/** `strictest` takes, of the rules that differ, the one that asks most. */
export const codesSchema = z.strictObject({
  exhaust: z.enum(['strictest', 'length', 'face', 'area-least', 'area-most', 'older-area', 'older-perimeter']),
  rinsePressure: z.enum(['strictest', 'food-code', 'older']),
  drainUnits: z.enum(['strictest', 'ipc', 'upc', 'chicago']),
  handSink: z.enum(['strictest', 'food-code', 'within-25-ft']),
  handSinkWater: z.enum(['strictest', 'food-code-2022', 'food-code-2017']),
  /** Gaps about fixed equipment: any one way of making them good, or all of them. */
  spacing: z.enum(['strictest', 'any', 'all']),
  light: z.enum(['strictest', 'food-code', 'local', 'military']),
  // A literal, not an enum, of words like numbers: an enum would show those first.
  heatTable: z.literal(['strictest', '2001', '2009-2017']),
  /** Whether a machine's current counts as lasting, for its breaker: the sources do not settle it. */
  load: z.enum(['strictest', 'continuous', 'not-continuous']),
});

export const STRICTEST: z.infer<typeof codesSchema> = {
  exhaust: 'strictest',
  rinsePressure: 'strictest',
  drainUnits: 'strictest',
  handSink: 'strictest',
  handSinkWater: 'strictest',
  spacing: 'strictest',
  light: 'strictest',
  heatTable: 'strictest',
  load: 'strictest',
};

// ---------------------------------------------------------------- a machine's own waste, wires and record

export const WIRES = ['14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'] as const;

const driven = () => z.nullable(z.enum(['contactor', 'motor', 'nothing']));

export const DRAIN_MATERIALS = ['plastic', 'cast-iron', 'old'] as const;

export const hookUpSchema = z.strictObject({
  /** Which water it is connected to. */
  water: z.nullable(z.enum(['hot', 'cold'])),
  waste: z.nullable(z.enum(['indirect', 'direct'])),
  airGap: knownLength(),
  /** The machine's own waste pipe: over an air gap to what receives it, connected directly all the way. */
  drainBore: knownLength(10, 500),
  drainSlope: knownSlope(),
  /** What the drains are made of that carry it on. */
  drainMaterial: z.nullable(z.enum(DRAIN_MATERIALS)),
  /** A trap of its own in the waste pipe, before it ends over what receives it. */
  wasteTrapped: knownFact(),
  /** What keeps its water out of the building's. */
  backflow: z.nullable(z.enum(['air-gap', 'preventer', 'none'])),
  supplyGap: knownLength(0, 2000),
  /** The booster of its final rinse: in the machine, or standing apart with a pipe between. */
  boosterPlace: z.nullable(z.enum(['inside', 'apart'])),
  boosterWay: knownLength(),
  boosterBelow: knownLength(0, 5000),
  /** Held off the wall, so that it can be cleaned behind. */
  boosterOffWall: knownFact(),
  /** Copper, American gauge. */
  wire: z.nullable(z.literal(WIRES)),
  /** The machine is marked for terminals of 75 °C. */
  markedFor75C: knownFact(),
  breakerA: known('current', 1000, 1),
  wireWay: knownLength(),
  ventSignal: driven(),
  rinseAidSignal: driven(),
  detergentSignal: driven(),
  clearBelow: knownLength(0, 2000),
  /** Sealed to what stands beside and behind it. */
  sealed: knownFact(),
  /** What a plate's own thermometer showed over one cycle. */
  plateRecord: listOf(
    z.strictObject({
      at: quantity(0, 3600, { of: 'duration' }),
      tempC: quantity(0, 120, { of: 'temperature' }),
    }),
    0,
    500,
  ),
});

export const UNKNOWN_HOOK_UP: z.infer<typeof hookUpSchema> = {
  water: null,
  waste: null,
  airGap: null,
  drainBore: null,
  drainSlope: null,
  drainMaterial: null,
  wasteTrapped: null,
  backflow: null,
  supplyGap: null,
  boosterPlace: null,
  boosterWay: null,
  boosterBelow: null,
  boosterOffWall: null,
  wire: null,
  markedFor75C: null,
  breakerA: null,
  wireWay: null,
  ventSignal: null,
  rinseAidSignal: null,
  detergentSignal: null,
  clearBelow: null,
  sealed: null,
  plateRecord: [],
};

// ---------------------------------------------------------------- how tables and things are made

/** Rims, drainage and legs. */
export const makeSchema = z.strictObject({
  rim: knownLength(0, 300),
  /** The deck is dished to a drain of its own before the machine. */
  scupper: knownFact(),
  clearBelow: knownLength(0, 2000),
  sealed: knownFact(),
});

export const UNKNOWN_MAKE: z.infer<typeof makeSchema> = { rim: null, scupper: null, clearBelow: null, sealed: null };

/** Of a sink that stands by itself. */
export const basinsSchema = z.strictObject({
  count: z.nullable(quantity(1, 6, { of: 'count' })),
  length: knownLength(10, 3000),
  width: knownLength(10, 3000),
  depth: knownLength(10, 1500),
  leftBoard: knownLength(0, 5000),
  rightBoard: knownLength(0, 5000),
  /** How its bowls empty. */
  waste: z.nullable(z.enum(['indirect', 'direct'])),
  sanitizing: z.nullable(z.enum(['hot-water', 'chemical'])),
  /** The bowl in which hot water sanitises has a heater of its own. */
  heater: knownFact(),
});

export const UNKNOWN_BASINS: z.infer<typeof basinsSchema> = {
  count: null,
  length: null,
  width: null,
  depth: null,
  leftBoard: null,
  rightBoard: null,
  waste: null,
  sanitizing: null,
  heater: null,
};

// ---------------------------------------------------------------- runs, hoods, drains

export const DUCT_CAPS = ['none', 'well-spaced', 'low-cone'] as const;
export const BEND_MAKES = ['smooth', '3-piece', '4-piece', '5-piece'] as const;
export const INSULATION_KINDS = ['mineral-fiber', 'glass-fiber-board', 'cellular-glass', 'elastomeric-foam'] as const;
export const DUCT_MATERIALS = ['galvanized', 'galvanized-spiral', 'stainless', 'aluminum', 'pvc', 'flexible'] as const;

export const ductSchema = z.strictObject({
  material: z.nullable(z.enum(DUCT_MATERIALS)),
  /** Inside sides of a rectangular duct; null for a round one. Its equal in friction, a round one, is the run's diameter. */
  sides: z.nullable(z.strictObject({ width: length(25, 2000), height: length(25, 2000) })),
  airflow: known('airflow', 20),
  /** Radius of a bend's centre line over the diameter; 0 for a mitred one. */
  bendRadius: z.nullable(quantity(0, 5, { of: 'count' })),
  bendMake: z.nullable(z.enum(BEND_MAKES)),
  insulation: knownLength(0, 300),
  insulationKind: z.nullable(z.enum(INSULATION_KINDS)),
  /** Joints made tight: what condenses stays inside. */
  sealed: knownFact(),
  cap: z.nullable(z.enum(DUCT_CAPS)),
  /** What the machine sends into the run, as its maker states it or as it was measured. */
  exhaustC: knownTemperature(),
  exhaustHumidity: known('share', 1),
  /** Where the run sags between two higher places. */
  lowPointDrain: knownFact(),
  intakeDistance: knownLength(),
  lineDistance: knownLength(),
  aboveGround: knownLength(),
  aboveRoof: knownLength(),
});

export const UNKNOWN_DUCT: z.infer<typeof ductSchema> = {
  material: null,
  sides: null,
  airflow: null,
  bendRadius: null,
  bendMake: null,
  insulation: null,
  insulationKind: null,
  sealed: null,
  cap: null,
  exhaustC: null,
  exhaustHumidity: null,
  lowPointDrain: null,
  intakeDistance: null,
  lineDistance: null,
  aboveGround: null,
  aboveRoof: null,
};

export const floorWasteSchema = z.strictObject({
  trapped: knownFact(),
  vented: knownFact(),
  bore: knownLength(10, 500),
  slope: knownSlope(),
  volume: known('volume', 1),
});

export const UNKNOWN_FLOOR_WASTE: z.infer<typeof floorWasteSchema> = { trapped: null, vented: null, bore: null, slope: null, volume: null };

/** Of the scrap opening, where it is a trough. */
export const troughSchema = {
  troughDepth: knownLength(0, 1000),
  troughSlope: knownSlope(),
  troughCovers: z.nullable(quantity(0, 50, { unit: 'count' })),
  /** The first is at the shallow end, the others follow at equal distances. */
  troughInlets: z.nullable(quantity(0, 50, { unit: 'count' })),
};
/** Of a sink in a table. */
export const bowlSchema = {
  rackSlide: knownLength(0, 1000),
  waste: z.nullable(z.enum(['indirect', 'direct'])),
};

export const UNKNOWN_TROUGH = { troughDepth: null, troughSlope: null, troughCovers: null, troughInlets: null };
export const UNKNOWN_BOWL = { rackSlide: null, waste: null };

/** What a thing may be unknown in. */
export const UNKNOWN_THING = { clearBelow: null, sealed: null, basins: null };
