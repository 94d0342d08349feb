import type { Hood, Plan, Thing } from '../../src/plan';
import { insideTurn } from './beforeTables';
import type { Fault } from './faults';
import { ownDataSheet, tableOf } from './linePlan';
import { addThing, hoodOf } from './roomPlan';
import { THREE_BOWLS } from './threeBowls';

const shelving = (plan: Plan) => {
  const found = plan.things.find(({ id }) => id === 'clean-shelving');
  if (found === undefined) throw new Error('the plan has no shelving');
  return found;
};

const without = (plan: Plan, ...ids: string[]): void => void (plan.things = plan.things.filter(({ id }) => !ids.includes(id)));

/** Every fitting of the plan with this id. */
function editFitting(plan: Plan, id: string, change: Record<string, number | null>): void {
  for (const { fittings } of plan.tables) for (const fitting of fittings) if (fitting.id === id) Object.assign(fitting, change);
}

/** A short trough with nothing wrong. */
const TROUGH = { troughDepth: 101.6, troughSlope: 1 / 96, troughCovers: 1, troughInlets: 1 };

/** A hood of its own just inside the door, as wide as the door and a little, its lip at a height. */
export function canopyAtDoor(plan: Plan, lipHeight: number): Hood {
  const [door] = plan.room.openings;
  const [start, end] = ['wall-front', 'wall-left'].map((id) => plan.room.outline.find((corner) => corner.id === id));
  if (door === undefined || start === undefined || end === undefined) throw new Error('the plan has no door in its front');
  const [x, y] = [start.x - door.from - door.width / 2, start.y - 300];
  return { ...hoodOf(plan), id: 'low-hood', lipHeight, x, y, rotationDeg: 0, width: door.width + 400, depth: 500, height: 400 };
}

/** Where the door of the front wall has its latch, and which way the floor beside it goes. That wall is walked from the right to the left. */
function latchOf({ room }: Plan): { x: number; y: number; toward: 1 | -1 } {
  const [door] = room.openings;
  const start = room.outline.find(({ id }) => id === 'wall-front');
  if (door === undefined || start === undefined) throw new Error('the plan has no door in its front');
  const isAtEnd = door.hinge === 'start';
  return { x: start.x - door.from - (isAtEnd ? door.width : 0), y: start.y, toward: isAtEnd ? -1 : 1 };
}

/** A three-compartment sink far to the left of the room, where it stands in nobody’s way. */
function addSinkOutside(plan: Plan, change: Partial<NonNullable<Thing['basins']>>): void {
  const [corner] = plan.room.outline;
  if (corner === undefined) throw new Error('the room has no corner');
  const basins: Thing['basins'] = { ...THREE_BOWLS, ...change };
  const sink: Thing = { ...shelving(plan), id: 'sink', kind: 'three-compartment-sink', ware: 'none', basins };
  plan.things.push({ ...sink, x: corner.x - 20_000, y: corner.y });
}

/** Faults of people's places and of cleanliness, on any line. */
export const PEOPLE_FAULTS: readonly Fault[] = [
  {
    name: 'shelving with its front to the wall',
    change: (plan) => void (shelving(plan).rotationDeg += 180),
    expect: ['stop ways-to-stations:storage:clean-shelving'],
  },
  {
    name: 'a low canopy over the way in',
    change: (plan) => void plan.hoods.push(canopyAtDoor(plan, 1950)),
    expect: ['watch headroom:low-hood', 'watch make-up-balances:make-up:machine'],
  },
  {
    name: 'a door of 78 in high',
    change: ({ room }) => {
      for (const opening of room.openings) opening.height = 1981.2;
    },
    expect: ['stop door-passable:height:door'],
  },
  {
    name: 'a bin 6 in beside the latch of the door',
    change: (plan) => {
      const { x, y, toward } = latchOf(plan);
      addThing(plan, 'latch-bin', x + 202.4 * toward, y - 70, 100, 100, { kind: 'bin' });
    },
    expect: ['watch door-approach:latch:door'],
  },
  {
    name: 'an island that leaves 29 in before both tables, where nobody wants more',
    cornerOnly: true,
    change: (plan) => {
      plan.settings.aisleWidth = plan.settings.personWidth;
      const [size, edge] = [1300, tableOf(plan, 'soiled').rackLineFromEdge];
      const { x, y } = insideTurn(plan, edge + 736.6 + size / 2);
      addThing(plan, 'island', x, y, size, size, { kind: 'other' });
    },
    expect: ['watch accessible-approach:space:machine', 'watch working-space:controls:machine:island'],
  },
  { name: 'walls not known to be fixed', change: ({ finish }) => void (finish.fixedWalls = null), expect: ['ask accessible-approach'] },
  {
    name: 'a bowl of 810 across',
    change: (plan) => editFitting(plan, 'pre-rinse', { width: 810 }),
    expect: ['watch reach-over-table:soiled-table', 'stop rack-fits-table:bowl:pre-rinse:soiled-table'],
  },
  {
    name: 'light of 15 fc',
    change: ({ finish }) => void (finish.light = 161),
    expect: ['stop light-enough:machine'],
  },
  { name: 'light of 50 fc', change: ({ finish }) => void (finish.light = 538.2), expect: ['watch light-enough:machine'] },
  { name: 'light not measured', change: ({ finish }) => void (finish.light = null), expect: ['ask light-enough:machine'] },
  {
    name: 'nobody knows what follows the peak',
    change: ({ demand }) => void (demand.restMinutes = null),
    expect: ['ask rack-lift:machine:clean-shelving'],
  },
  { name: 'racks of 9 kg', change: ({ demand }) => void (demand.rackMass = 9), expect: ['watch rack-lift:shelf:machine:clean-shelving'] },
  {
    name: 'an overshelf at 6 ft, racks of 7.2 kg',
    change: (plan) => {
      plan.demand.rackMass = 7.2;
      tableOf(plan, 'clean').fittings.push({ id: 'high-shelf', kind: 'overshelf', at: 1000, length: 600, depth: 305, height: 1750 });
    },
    expect: ['watch rack-lift:overshelf:machine:high-shelf:clean-table'],
  },
  {
    name: 'controls at the floor',
    change: (plan) => {
      const own = ownDataSheet({});
      plan.sheets.push({ ...own, controls: own.controls.map((position) => ({ ...position, zFrom: 200, zTo: 700 })) });
      for (const machine of plan.machines) machine.sheet = own.id;
    },
    expect: ['watch controls-reachable:height:machine'],
  },
  {
    name: 'racks not weighed',
    change: ({ demand }) => void (demand.rackMass = null),
    expect: ['ask rack-lift:deck:machine:clean-shelving', 'ask rack-lift:shelf:machine:clean-shelving'],
  },
  {
    name: 'after chemicals, one rack on a narrow shelf',
    families: ['chemical-sanitising'],
    change: (plan) => void (shelving(plan).width = 600),
    expect: ['watch drying-places:clean-table:clean-shelving'],
  },
  {
    name: 'a backsplash of 6 in',
    change: (plan) => void (tableOf(plan, 'soiled').backsplash = 152.4),
    expect: ['watch backsplash:soiled-table'],
  },
  { name: 'a rim of 2 in', change: (plan) => void (tableOf(plan, 'clean').make.rim = 50.8), expect: ['watch rim:clean-table'] },
  { name: 'a rim not known', change: (plan) => void (tableOf(plan, 'clean').make.rim = null), expect: ['ask rim:clean-table'] },
  {
    name: 'a pre-rinse sink 150 deep',
    change: (plan) => editFitting(plan, 'pre-rinse', { bowlDepth: 150 }),
    expect: ['watch pre-rinse-size:depth:pre-rinse:soiled-table'],
  },
  {
    name: 'a bowl of 18 in under a rack, and no slide',
    change: (plan) => editFitting(plan, 'pre-rinse', { width: 457.2, rackSlide: 0 }),
    expect: ['watch pre-rinse-size:rack:pre-rinse:soiled-table'],
  },
  {
    name: 'a trough 3 in deep',
    change: (plan) => editFitting(plan, 'scrap', { ...TROUGH, troughDepth: 76.2 }),
    expect: ['watch pre-rinse-size:trough-depth:scrap:soiled-table'],
  },
  {
    name: 'a trough whose fall is not known',
    change: (plan) => editFitting(plan, 'scrap', { ...TROUGH, troughSlope: null }),
    expect: ['ask pre-rinse-size:trough-fall:scrap:soiled-table'],
  },
  {
    name: 'a trough without a cover',
    change: (plan) => editFitting(plan, 'scrap', { ...TROUGH, troughCovers: 0 }),
    expect: ['watch pre-rinse-size:trough-covers:scrap:soiled-table'],
  },
  {
    name: 'a trough whose inlets are not known',
    change: (plan) => editFitting(plan, 'scrap', { ...TROUGH, troughInlets: null }),
    expect: ['ask pre-rinse-size:trough-inlets:scrap:soiled-table'],
  },
  {
    name: 'racks 40 mm wider than the clean table leaves room for',
    change: (plan) => void (tableOf(plan, 'clean').depth = 273 + 254 - 20),
    expect: ['stop rack-fits-table:back:clean-table'],
  },
  {
    name: 'no scupper',
    change: (plan) => void (tableOf(plan, 'soiled').make.scupper = false),
    expect: ['watch scupper:soiled-table'],
  },
  {
    name: 'a scupper not known',
    change: (plan) => void (tableOf(plan, 'soiled').make.scupper = null),
    expect: ['ask scupper:soiled-table'],
  },
  {
    name: 'no hand sink',
    change: (plan) => without(plan, 'hand-sink'),
    expect: ['stop hand-sink-near:count'],
  },
  {
    name: 'no bin at the hand sink',
    change: (plan) => without(plan, 'hand-sink-bin'),
    expect: ['watch waste-bins:hand-sink:hand-sink'],
  },
  {
    name: 'no bin at the scrap opening',
    change: (plan) => without(plan, 'waste-bin'),
    expect: ['watch waste-bins:scrap:scrap:soiled-table'],
  },
  { name: 'no bin', change: (plan) => without(plan, 'hand-sink-bin', 'waste-bin'), expect: ['watch waste-bins:room'] },
  {
    name: 'the machine 5 in above the floor',
    change: ({ machines }) => {
      for (const { hookUp } of machines) hookUp.clearBelow = 127;
    },
    expect: ['stop cleanable-below:machine'],
  },
  {
    name: 'a gap behind the clean table that is not sealed',
    change: (plan) => void (tableOf(plan, 'clean').make.sealed = false),
    expect: ['stop gaps-cleanable:clean-table'],
  },
  {
    name: 'a gap behind the machine that is not sealed',
    change: ({ machines }) => {
      for (const { hookUp } of machines) hookUp.sealed = false;
    },
    expect: ['stop gaps-cleanable:machine'],
  },
  {
    name: 'a gap behind the machine, sealed or not',
    change: ({ machines }) => {
      for (const { hookUp } of machines) hookUp.sealed = null;
    },
    expect: ['ask gaps-cleanable:machine'],
  },
  {
    name: 'shelving off the wall, not sealed',
    change: (plan) => void (shelving(plan).sealed = false),
    expect: ['watch gaps-cleanable:clean-shelving'],
  },
  {
    name: 'a hand sink, sealed or not',
    change: ({ things }) => {
      for (const thing of things) if (thing.kind === 'hand-sink') thing.sealed = null;
    },
    expect: ['ask gaps-cleanable:hand-sink'],
  },
  {
    name: 'clean ware 5 in above the floor',
    change: (plan) => void (shelving(plan).clearBelow = 127),
    expect: ['stop clean-off-floor:clean-shelving'],
  },
  { name: 'a level floor', change: ({ finish }) => void (finish.floorSlope = 0), expect: ['stop floor-drains:fall'] },
  { name: 'a floor not coved', change: ({ finish }) => void (finish.floorCoved = false), expect: ['stop floor-drains:cove'] },
  { name: 'a rough ceiling', change: ({ finish }) => void (finish.ceilingWashable = false), expect: ['watch ceiling:finish'] },
  {
    name: 'a three-compartment sink of two bowls',
    change: (plan) => addSinkOutside(plan, { count: 2, sanitizing: 'hot-water', heater: false }),
    expect: [
      'stop three-compartments:bowls:sink',
      'stop inside-room:sink',
      'stop sink-waste:way:sink:floor-drain',
      'stop manual-sanitizing:sink',
    ],
  },
  {
    name: 'a three-compartment sink connected directly far from every floor drain',
    change: (plan) => addSinkOutside(plan, { waste: 'direct' }),
    expect: ['stop sink-waste:direct:sink:floor-drain', 'stop inside-room:sink'],
  },
  {
    name: 'nobody knows how the bowls of a three-compartment sink empty',
    change: (plan) => addSinkOutside(plan, { waste: null }),
    expect: ['ask sink-waste:sink', 'stop inside-room:sink'],
  },
  {
    name: 'nobody knows whether a sanitising bowl has a heater',
    change: (plan) => addSinkOutside(plan, { sanitizing: 'hot-water' }),
    expect: ['ask manual-sanitizing:sink', 'stop inside-room:sink', 'stop sink-waste:way:sink:floor-drain'],
  },
  {
    name: 'nobody knows how the pre-rinse empties',
    change: (plan) => editFitting(plan, 'pre-rinse', { waste: null }),
    expect: ['ask sink-waste:pre-rinse:soiled-table'],
  },
];
