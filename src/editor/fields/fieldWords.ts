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

  // Demand and supply
  mealsPerDay: word('Meals a day', 'demand'),
  peakMeals: word('Meals in the peak', 'demand'),
  peakMinutes: word('Peak, minutes', 'demand'),
  piecesPerMeal: word('Pieces a meal', 'demand'),
  piecesPerRack: word('Pieces a rack', 'demand'),
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
};

/** What people read for a stored word. */
export function optionLabel(value: FieldValue): string {
  return OPTION_LABELS[String(value)] ?? String(value).replaceAll('-', ' ');
}
