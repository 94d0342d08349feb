import { type DataSheet, FAMILIES, findFamily } from '../catalog';
import { type Point, rotate } from '../geometry';
import { createPlan } from './createPlan';
import { createLineHood, createLineRun, LINE_HOOD_EXHAUST } from './line/lineAir';
import { createLineRoom, type LineBox, lineBox, SHELF_DEPTH, SHELF_GAP, SHELF_WIDTH } from './line/lineRoom';
import { type LineConfiguration, type LineHand, type LineSide, lineSides } from './line/lineSides';
import { createHookUp, createLineSite, LINE_THING } from './line/lineSite';
import { CLEAN_LENGTH, createCleanTable, createSoiledTable } from './line/lineTables';
import { createCleanliness } from './line/lineThings';
import type { Machine, Order, Plan, Supply, Thing } from './planSchema';
import { transformPlan } from './transformPlan';

export interface LinePlanOptions {
  /** A family of the catalogue, or a data sheet of one's own (the plan then carries it). */
  family: string | DataSheet;
  configuration: LineConfiguration;
  hand: LineHand;
  /** Turns the room with everything in it, clockwise about the machine's centre. */
  rotationDeg?: number;
  /** Where the machine's centre comes to lie. Left out: the unturned room's corner lies at the origin. */
  at?: Point;
}

/** A whole line that holds, for a data sheet: machine, both tables with their stations, air, storage, and a room around it. */
export function createLinePlan(options: LinePlanOptions): Plan {
  const sheet = typeof options.family === 'string' ? (findFamily(options.family) ?? FAMILIES[0]) : options.family;
  if (sheet === undefined) throw new Error('the catalogue is empty');
  const { soiled, clean } = lineSides(options.configuration, options.hand);
  const box = lineBox(options.configuration, soiled, sheet);
  const centre = { x: sheet.width / 2, y: sheet.depth / 2 };
  const plan = createPlanInMachineFrame(options, sheet, soiled, clean, box);
  const rotateDeg = options.rotationDeg ?? 0;
  const turned = rotate(centre, rotateDeg);
  const at = options.at ?? { x: centre.x - box.left, y: centre.y - box.back };
  return transformPlan(plan, { rotateDeg, move: { x: at.x - turned.x, y: at.y - turned.y } });
}

/** The plan with the machine's back left corner at the origin, unturned. */
function createPlanInMachineFrame(options: LinePlanOptions, sheet: DataSheet, soiled: LineSide, clean: LineSide, box: LineBox): Plan {
  const machine = createMachine(options.configuration, sheet);
  const variant = sheet.electrical[0];
  return {
    ...createPlan(),
    room: createLineRoom(box, soiled, sheet),
    machines: [machine],
    tables: [createSoiledTable(machine.id, soiled, sheet), createCleanTable(machine.id, clean, sheet)],
    things: [createShelving(clean, sheet, box), ...createCleanliness(box, soiled, clean)],
    hoods: sheet.vent.kind === 'hood' ? [createLineHood(box, sheet)] : [],
    runs: sheet.vent.kind === 'direct' ? [createLineRun(machine.id, box, sheet)] : [],
    supply: createSupply(sheet, variant),
    demand: LINE_DEMAND,
    ...createLineSite(airOf(sheet)),
    order: createOrder(options, sheet, variant),
    sheets: typeof options.family === 'string' ? [] : [options.family],
  };
}

function createMachine(configuration: LineConfiguration, sheet: DataSheet): Machine {
  const wanted = configuration === 'right-front' ? 'front-right' : 'front-left';
  const controls = sheet.controls.find((position) => position.id === wanted) ?? sheet.controls[0];
  return {
    id: 'machine',
    sheet: sheet.id,
    x: sheet.width / 2,
    y: sheet.depth / 2,
    rotationDeg: 0,
    controls: controls?.id ?? wanted,
    electrical: sheet.electrical[0]?.id ?? null,
    hookUp: createHookUp(sheet, sheet.electrical[0]),
  };
}

/** Shelving against the wall behind the clean table, beyond its end, its front to the room. */
function createShelving(clean: LineSide, sheet: DataSheet, box: LineBox): Thing {
  const along = CLEAN_LENGTH + SHELF_GAP + SHELF_WIDTH / 2;
  const off = SHELF_DEPTH / 2 + 10;
  const rightWall = clean.operatorSide === 'right';
  const place =
    clean.side === 'front'
      ? { x: rightWall ? box.right - off : box.left + off, y: sheet.depth + along, rotationDeg: rightWall ? 90 : -90 }
      : { x: clean.side === 'left' ? -along : sheet.width + along, y: box.back + off, rotationDeg: 0 };
  return {
    id: 'clean-shelving',
    kind: 'shelving',
    name: '',
    ...place,
    width: SHELF_WIDTH,
    depth: SHELF_DEPTH,
    height: 1800,
    ware: 'clean',
    ...LINE_THING,
  };
}

/** A modest noon. */
const LINE_DEMAND: Plan['demand'] = {
  mealsPerDay: 300,
  peakMeals: 60,
  peakMinutes: 60,
  piecesPerMeal: 6,
  piecesPerRack: 20,
  hoursPerDay: 4,
  daysPerYear: 180,
  rackMass: 7,
  restMinutes: 60,
  scrapSeconds: 60,
};

/** What comes in for what is drawn out. */
const airOf = ({ vent }: DataSheet) => (vent.kind === 'hood' ? LINE_HOOD_EXHAUST : vent.kind === 'direct' ? (vent.airflow ?? 0) : 0);

type Variant = DataSheet['electrical'][number] | undefined;

/** What the machine needs, and a little more. */
function createSupply(sheet: DataSheet, variant: Variant): Supply {
  return {
    hotWaterC: Math.max(60, sheet.waterFeed === 'hot' ? sheet.temperatures.supplyC : 0),
    coldWaterC: Math.max(12, sheet.waterFeed === 'cold' ? sheet.temperatures.supplyC : 0),
    flowPressureKpa: 140,
    voltage: variant?.voltage ?? null,
    phase: variant?.phase ?? null,
    toGroundV: variant === undefined ? null : variant.voltage === 208 ? 120 : variant.voltage,
  };
}

/** A quote that agrees with the drawing. */
function createOrder(options: LinePlanOptions, sheet: DataSheet, variant: Variant): Order {
  return {
    reference: '',
    configuration: options.configuration === 'straight' ? 'straight' : 'corner',
    hand: options.hand,
    voltage: variant?.voltage ?? null,
    phase: variant?.phase ?? null,
    vent: sheet.vent.kind,
    clearOpening: sheet.clearOpening,
  };
}
