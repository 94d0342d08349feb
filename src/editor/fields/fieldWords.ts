import type { FieldGroup, FieldValue } from './field';

/**
 * The words of the cards: labels of fields and of choices, and the part of the card where a field
 * stands. A key may be told apart by what it belongs to ("opening.width" before "width").
 */

interface FieldWord {
  readonly label: string;
  readonly group: FieldGroup;
}

const word = (label: string, group: FieldGroup): FieldWord => ({ label, group });

export const FIELD_WORDS: Readonly<Record<string, FieldWord>> = {
  // Where things are
  x: word('Across', 'place'),
  y: word('Down', 'place'),
  z: word('Above the floor', 'place'),
  rotationDeg: word('Turned', 'place'),
  width: word('Width', 'size'),
  depth: word('Depth', 'size'),
  height: word('Height', 'size'),
  size: word('Grate', 'size'),

  // Room
  'room.name': word('Room', 'room'),
  ceilingHeight: word('Ceiling', 'room'),
  northDeg: word('North', 'room'),
  'wall.length': word('Length of the wall', 'size'),
  'corner.x': word('Across', 'corners'),
  'corner.y': word('Down', 'corners'),
  wall: word('Wall', 'place'),
  from: word('From the start of the wall', 'place'),
  sill: word('Sill', 'size'),
  'opening.width': word('Clear width', 'size'),
  'opening.height': word('Clear height', 'size'),
  swing: word('Opens', 'openings'),
  hinge: word('Hinges at', 'openings'),

  // Machine
  sheet: word('Data sheet', 'identity'),
  controls: word('Controls', 'controls'),
  electrical: word('Electrical', 'controls'),

  // Table
  role: word('Carries', 'identity'),
  'place.kind': word('Stands', 'joint'),
  'place.machine': word('Machine', 'joint'),
  side: word('Side', 'joint'),
  gap: word('Gap', 'joint'),
  offset: word('Out of line', 'joint'),
  skewDeg: word('Off square', 'joint'),
  'place.x': word('Start, across', 'joint'),
  'place.y': word('Start, down', 'joint'),
  headingDeg: word('Runs toward', 'joint'),
  'legs.length': word('Length', 'legs'),
  turnDeg: word('Turn before it', 'legs'),
  'table.depth': word('Depth', 'size'),
  rackLineFromEdge: word('Edge to rack line', 'size'),
  operatorSide: word('People stand', 'size'),
  backsplash: word('Backsplash', 'size'),
  'deck.kind': word('Heights known as', 'deck'),
  jointHeight: word('Height at the joint', 'deck'),
  fall: word('Fall to the machine', 'deck'),
  heights: word('Deck height', 'deck'),
  'fittings.kind': word('Fitting', 'fittings'),
  at: word('From the joint', 'fittings'),
  'fittings.length': word('Along the table', 'fittings'),
  'fittings.width': word('Across the table', 'fittings'),
  bowlDepth: word('Bowl depth', 'fittings'),
  spray: word('Spray hose', 'fittings'),
  'fittings.depth': word('Depth from the back', 'fittings'),
  'fittings.height': word('Underside', 'fittings'),

  // Things
  'thing.kind': word('What it is', 'identity'),
  'thing.name': word('Own name', 'identity'),
  ware: word('Holds ware', 'identity'),
  'opening.kind': word('What it is', 'identity'),
  'drain.kind': word('What it is', 'identity'),
  'stub.kind': word('What it is', 'identity'),

  // Air
  lipHeight: word('Lower lip', 'size'),
  'hood.height': word('Body height', 'size'),
  'run.machine': word('Begins at', 'identity'),
  'points.x': word('Across', 'points'),
  'points.y': word('Down', 'points'),
  'points.z': word('Above the floor', 'points'),
  diameter: word('Diameter', 'size'),
  outlet: word('Leaves through', 'size'),
  fan: word('Fan in the run', 'fan'),
  'fan.at': word('Along the run', 'fan'),
  attitude: word('Fan stands', 'fan'),
  drainHole: word('Drain hole', 'fan'),
  cordWay: word('Way of the cord', 'fan'),

  // Hook-up of a machine
  'hookUp.water': word('Connected to', 'hookUp'),
  'hookUp.waste': word('Waste', 'hookUp'),
  airGap: word('Air gap', 'hookUp'),
  drainBore: word('Drain, inside', 'hookUp'),
  drainSlope: word('Fall of the drain', 'hookUp'),
  wire: word('Copper wire, AWG', 'hookUp'),
  markedFor75C: word('Marked for 75 °C', 'hookUp'),
  breakerA: word('Breaker', 'hookUp'),
  wireWay: word('Way of the wires', 'hookUp'),
  ventSignal: word('Vent signal drives', 'hookUp'),
  rinseAidSignal: word('Rinse-aid signal drives', 'hookUp'),
  detergentSignal: word('Detergent signal drives', 'hookUp'),
  clearBelow: word('Free height under it', 'size'),
  'hookUp.clearBelow': word('Free height under it', 'hookUp'),
  'plateRecord.at': word('Time', 'record'),
  'plateRecord.tempC': word('At the plate', 'record'),

  // How tables and sinks are made
  rim: word('Rim', 'make'),
  scupper: word('Scupper before the machine', 'make'),
  'make.clearBelow': word('Free height under it', 'make'),
  sealed: word('Joints sealed', 'make'),
  basins: word('Bowls and boards', 'basins'),
  'basins.count': word('Bowls', 'basins'),
  'basins.length': word('Bowl, left to right', 'basins'),
  'basins.width': word('Bowl, back to front', 'basins'),
  'basins.depth': word('Bowl, deep', 'basins'),
  leftBoard: word('Left drainboard', 'basins'),
  rightBoard: word('Right drainboard', 'basins'),

  // Ducts, hoods, floor drains
  exhaust: word('Airflow', 'air'),
  'duct.material': word('Duct', 'duct'),
  sides: word('Rectangular', 'duct'),
  'sides.width': word('Inside width', 'duct'),
  'sides.height': word('Inside height', 'duct'),
  'duct.airflow': word('Airflow', 'duct'),
  bendRadius: word('Bend radius ÷ diameter', 'duct'),
  insulation: word('Insulation', 'duct'),
  capped: word('Weather cap', 'duct'),
  exhaustC: word('Air in it', 'duct'),
  exhaustHumidity: word('Humidity in it', 'duct'),
  lowPointDrain: word('Drain at its low point', 'duct'),
  intakeDistance: word('Outlet to air intake', 'duct'),
  lineDistance: word('Outlet to property line', 'duct'),
  trapped: word('Trapped', 'waste'),
  'waste.bore': word('Pipe, inside', 'waste'),
  'waste.slope': word('Fall of the pipe', 'waste'),
  'waste.volume': word('Holds', 'waste'),

  // Air of the room
  roomC: word('Room', 'air'),
  roomHumidity: word('Humidity of the room', 'air'),
  makeUp: word('Make-up air', 'air'),
  makeUpC: word('Make-up air comes in at', 'air'),
  makeUpHumidity: word('Humidity of make-up air', 'air'),
  roomExhaust: word('General exhaust', 'air'),
  outdoorC: word('Coldest outside', 'air'),
  ductAirC: word('Around the run outside', 'air'),
  wallConductance: word('Outer wall lets through', 'air'),
  ceilingConductance: word('Ceiling lets through', 'air'),
  elevation: word('Above the sea', 'air'),

  // Finishes
  light: word('Light at the machine', 'finish'),
  ceilingWashable: word('Ceiling smooth, washable', 'finish'),
  floorCoved: word('Floor coved and sealed', 'finish'),
  floorSlope: word('Fall of the floor', 'finish'),
  fixedWalls: word('Walls fixed all around', 'finish'),

  // Pipes and tariff
  staticPressure: word('Pressure at rest', 'pipes'),
  hardness: word('Hardness', 'pipes'),
  'pipes.material': word('Pipe', 'pipes'),
  'pipes.bore': word('Pipe, inside', 'pipes'),
  heaterPower: word('Water heater', 'pipes'),
  storage: word('Hot water in store', 'pipes'),
  currency: word('Currency', 'tariff'),
  electricity: word('Electricity, a kWh', 'tariff'),
  gas: word('Gas, a kWh', 'tariff'),
  water: word('Water and sewer, a m³', 'tariff'),
  waterHeatedBy: word('Water heated by', 'tariff'),
  heaterEfficiency: word('Efficiency of the heater', 'tariff'),

  // Codes
  'codes.exhaust': word('Exhaust of hoods', 'codes'),
  rinsePressure: word('Rinse pressure', 'codes'),
  drainUnits: word('Fixture units', 'codes'),
  handSink: word('Place of hand sinks', 'codes'),
  handSinkWater: word('Water at hand sinks', 'codes'),

  // Demand and supply
  mealsPerDay: word('Meals a day', 'demand'),
  peakMeals: word('Meals in the peak', 'demand'),
  peakMinutes: word('Peak, minutes', 'demand'),
  piecesPerMeal: word('Pieces a meal', 'demand'),
  piecesPerRack: word('Pieces a rack', 'demand'),
  hoursPerDay: word('Hours a day', 'demand'),
  daysPerYear: word('Days a year', 'demand'),
  rackMass: word('A loaded rack', 'demand'),
  hotWaterC: word('Hot water', 'supply'),
  coldWaterC: word('Cold water', 'supply'),
  flowPressureKpa: word('Flow pressure', 'supply'),
  'supply.voltage': word('Voltage', 'supply'),
  'supply.phase': word('Phase', 'supply'),

  // Order
  reference: word('Quote', 'order'),
  configuration: word('Configuration', 'order'),
  hand: word('Hand', 'order'),
  'order.voltage': word('Voltage', 'order'),
  'order.phase': word('Phase', 'order'),
  vent: word('Vapour leaves by', 'order'),
  clearOpening: word('Door opening', 'order'),

  // Title and settings
  project: word('Project', 'title'),
  alternative: word('Alternative', 'title'),
  number: word('Drawing number', 'title'),
  revision: word('Revision', 'title'),
  drawnBy: word('Drawn by', 'title'),
  date: word('Date of issue', 'title'),
  units: word('Units', 'settings'),
  rackSize: word('Rack', 'settings'),
  rackPitch: word('Place for a rack', 'settings'),
  personWidth: word('Passage', 'settings'),
  racksBefore: word('Racks before', 'settings'),
  racksAfter: word('Racks after', 'settings'),
};

/** Words of a field: by what it belongs to and its key, else by its key. */
export function fieldWord(owner: string, key: string): FieldWord | null {
  return FIELD_WORDS[`${owner}.${key}`] ?? FIELD_WORDS[key] ?? null;
}

const OPTION_LABELS: Readonly<Record<string, string>> = {
  true: 'yes',
  false: 'no',
  '1': 'single-phase',
  '3': 'three-phase',
  us: 'feet and inches',
  metric: 'millimetres',
  joined: 'joined to a machine',
  free: 'free in the room',
  fall: 'height and fall',
  heights: 'heights as measured',
  'pass-window': 'pass-through window',
  sink: 'sink bowl',
  scrap: 'scrap opening',
  landing: 'rack landing',
  'drop-off': 'drop-off',
  in: 'into the room',
  out: 'out of the room',
  none: 'none',
  start: 'the start',
  end: 'the end',
  straight: 'straight-through',
  direct: 'a run of its own',
  recovery: 'heat recovery',
  hood: 'a hood',
  wall: 'the wall',
  roof: 'the roof',
  'three-compartment-sink': 'three-compartment sink',
  'left-to-right': 'left to right',
  'right-to-left': 'right to left',
  left: 'on the left',
  right: 'on the right',
  hot: 'hot water',
  cold: 'cold water',
  indirect: 'over an air gap',
  motor: 'a motor or pump directly',
  contactor: 'a contactor',
  nothing: 'nothing',
  strictest: 'the strictest',
  length: 'by length of hood',
  face: 'by face of hood',
  'area-least': 'by area, least',
  'area-most': 'by area, most',
  'older-area': 'by area, code of 2000',
  'older-perimeter': 'by open edge, code of 2000',
  'food-code': 'food code',
  older: 'older rules',
  ipc: 'international code',
  upc: 'uniform code',
  chicago: 'Chicago code',
  'within-25-ft': 'within 25 ft',
  'food-code-2022': 'food code of 2022',
  'food-code-2017': 'food code of 2017',
  'new-steel': 'steel, new',
  'old-steel': 'steel, old',
  pvc: 'PVC',
  factory: 'only in the order',
};

/** What people read for a stored word. */
export function optionLabel(value: FieldValue): string {
  return OPTION_LABELS[String(value)] ?? String(value).replaceAll('-', ' ');
}
