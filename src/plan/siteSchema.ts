import { z } from 'zod/mini';
import { known, length, line, listOf, quantity } from '../catalog';

/**
 * What is known of the building's services and of how things are made: asked for only by figures and checks, so every value
 * may be unknown. SI but for lengths (mm) and temperatures (°C). Each part has its empty value beside it.
 */

const knownLength = (text: string, min = 0, max?: number) => z.nullable(length(text, min, max));
const knownTemperature = (text: string, min = -60) => known('temperature', text, 120, min);
const knownFact = () => z.nullable(z.boolean());
const knownSlope = (text: string) => z.nullable(quantity(0, 0.5, { unit: 'ratio', text }));

// ---------------------------------------------------------------- air of the room, and the building

export const airSchema = z.strictObject({
  roomC: knownTemperature('Air in the room'),
  roomHumidity: known('share', 'Relative humidity in the room', 1),
  /** What is blown in from outside or from the next room, in place of what is drawn out. */
  makeUp: known('airflow', 'Make-up air', 100),
  makeUpC: knownTemperature('Make-up air as it comes in'),
  makeUpHumidity: known('share', 'Relative humidity of the make-up air', 1),
  /** General exhaust of the room, beside hoods and runs. */
  roomExhaust: known('airflow', 'General exhaust of the room', 100),
  outdoorC: knownTemperature('Coldest air outside'),
  ductAirC: knownTemperature('Air around the run outside of the room'),
  wallConductance: known('conductance', 'Heat through the outer wall', 20),
  ceilingConductance: known('conductance', 'Heat through the ceiling', 20),
  elevation: z.nullable(length('Height above the sea', 0, 4_000_000)),
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
  light: known('illuminance', 'Light at the machine, 30 in above the floor', 20_000),
  ceilingWashable: knownFact(),
  floorCoved: knownFact(),
  floorSlope: knownSlope('Fall of the floor to its drain'),
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
  staticPressure: known('pressure', 'Pressure in the pipe while nothing flows', 2_000_000),
  hardness: known('hardness', 'Hardness of the water', 5),
  material: z.nullable(z.enum(PIPE_MATERIALS)),
  bore: knownLength('Inside diameter of the pipe to the machine', 5, 200),
  heaterPower: known('power', 'Power of the water heater', 2_000_000),
  storage: known('volume', 'Hot water in store', 100),
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
  currency: line('Currency', 8),
  electricity: known('count', 'Price of a kilowatt-hour of electricity', 1000),
  gas: known('count', 'Price of a kilowatt-hour of gas', 1000),
  water: known('count', 'Price of a cubic metre of water, sewer included', 10_000),
  waterHeatedBy: z.nullable(z.enum(['electricity', 'gas'])),
  heaterEfficiency: known('share', 'Share of the heater’s energy that reaches the water', 1, 0.05),
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
  airGap: knownLength('From the end of the waste pipe to the rim of what receives it'),
  /** The machine's own waste pipe: over an air gap to what receives it, connected directly all the way. */
  drainBore: knownLength('Inside diameter of its waste pipe', 10, 500),
  drainSlope: knownSlope('Fall of its waste pipe'),
  /** What the drains are made of that carry it on. */
  drainMaterial: z.nullable(z.enum(DRAIN_MATERIALS)),
  /** A trap of its own in the waste pipe, before it ends over what receives it. */
  wasteTrapped: knownFact(),
  /** What keeps its water out of the building's. */
  backflow: z.nullable(z.enum(['air-gap', 'preventer', 'none'])),
  supplyGap: knownLength('From the outlet of its water to its flood rim', 0, 2000),
  /** The booster of its final rinse: in the machine, or standing apart with a pipe between. */
  boosterPlace: z.nullable(z.enum(['inside', 'apart'])),
  boosterWay: knownLength('Way of the pipe from the booster to the machine'),
  boosterBelow: knownLength('Free height under the booster, above the floor', 0, 5000),
  /** Held off the wall, so that it can be cleaned behind. */
  boosterOffWall: knownFact(),
  /** Copper, American gauge. */
  wire: z.nullable(z.literal(WIRES)),
  /** The machine is marked for terminals of 75 °C. */
  markedFor75C: knownFact(),
  breakerA: known('current', 'Breaker', 1000, 1),
  wireWay: knownLength('Way of the wires from the panel to the machine'),
  ventSignal: driven(),
  rinseAidSignal: driven(),
  detergentSignal: driven(),
  clearBelow: knownLength('Free height under the machine', 0, 2000),
  /** Sealed to what stands beside and behind it. */
  sealed: knownFact(),
  /** What a plate's own thermometer showed over one cycle. */
  plateRecord: listOf(
    z.strictObject({
      at: quantity(0, 3600, { of: 'duration', text: 'Since the start of the cycle' }),
      tempC: quantity(0, 120, { of: 'temperature', text: 'At the plate' }),
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
  rim: knownLength('Height of the rolled rim along the edge', 0, 300),
  /** The deck is dished to a drain of its own before the machine. */
  scupper: knownFact(),
  clearBelow: knownLength('Free height under it, above the floor', 0, 2000),
  sealed: knownFact(),
});

export const UNKNOWN_MAKE: z.infer<typeof makeSchema> = { rim: null, scupper: null, clearBelow: null, sealed: null };

/** Of a sink that stands by itself. */
export const basinsSchema = z.strictObject({
  count: z.nullable(quantity(1, 6, { of: 'count', text: 'Bowls' })),
  length: knownLength('One bowl, left to right', 10, 3000),
  width: knownLength('One bowl, back to front', 10, 3000),
  depth: knownLength('One bowl, deep', 10, 1500),
  leftBoard: knownLength('Drainboard on the left; 0 for none', 0, 5000),
  rightBoard: knownLength('Drainboard on the right; 0 for none', 0, 5000),
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
  sides: z.nullable(z.strictObject({ width: length('Inside width', 25, 2000), height: length('Inside height', 25, 2000) })),
  airflow: known('airflow', 'Airflow of the run', 20),
  /** Radius of a bend's centre line over the diameter; 0 for a mitred one. */
  bendRadius: z.nullable(quantity(0, 5, { of: 'count', text: 'Radius of a bend over the diameter; 0 mitred' })),
  bendMake: z.nullable(z.enum(BEND_MAKES)),
  insulation: knownLength('Thickness of the insulation; 0 for none', 0, 300),
  insulationKind: z.nullable(z.enum(INSULATION_KINDS)),
  /** Joints made tight: what condenses stays inside. */
  sealed: knownFact(),
  cap: z.nullable(z.enum(DUCT_CAPS)),
  /** What the machine sends into the run, as its maker states it or as it was measured. */
  exhaustC: knownTemperature('Air in the run'),
  exhaustHumidity: known('share', 'Relative humidity of the air in the run', 1),
  /** Where the run sags between two higher places. */
  lowPointDrain: knownFact(),
  intakeDistance: knownLength('From the outlet to the nearest air intake'),
  lineDistance: knownLength('From the outlet to the nearest property line or other building on the lot'),
  aboveGround: knownLength('From the ground up to the outlet'),
  aboveRoof: knownLength('From the roof up to the outlet'),
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
  bore: knownLength('Inside diameter of its pipe', 10, 500),
  slope: knownSlope('Fall of its pipe'),
  volume: known('volume', 'What the receptor holds', 1),
});

export const UNKNOWN_FLOOR_WASTE: z.infer<typeof floorWasteSchema> = { trapped: null, vented: null, bore: null, slope: null, volume: null };

/** Of the scrap opening, where it is a trough. */
export const troughSchema = {
  troughDepth: knownLength('Depth of the trough at its shallow end; 0 for a plain opening', 0, 1000),
  troughSlope: knownSlope('Fall of the trough to where it empties'),
  troughCovers: z.nullable(quantity(0, 50, { unit: 'count', text: 'Covers over the trough' })),
  /** The first is at the shallow end, the others follow at equal distances. */
  troughInlets: z.nullable(quantity(0, 50, { unit: 'count', text: 'Water inlets of the trough, the first at its shallow end' })),
};
/** Of a sink in a table. */
export const bowlSchema = {
  rackSlide: knownLength('Rack slide over the bowl, inside; 0 for none', 0, 1000),
  waste: z.nullable(z.enum(['indirect', 'direct'])),
};

export const UNKNOWN_TROUGH = { troughDepth: null, troughSlope: null, troughCovers: null, troughInlets: null };
export const UNKNOWN_BOWL = { rackSlide: null, waste: null };

/** What a thing may be unknown in. */
export const UNKNOWN_THING = { clearBelow: null, sealed: null, basins: null };
