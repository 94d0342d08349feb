import { rotate } from '../../src/geometry';
import type { Plan } from '../../src/plan';
import { beforeSoiled } from './beforeTables';
import type { Fault } from './faults';
import { addColumn, addThing, hoodOf } from './roomPlan';
import { UNHOODED } from './unhooded';

/** Middle of the back of the unturned machine, so far behind it. */
function behind(plan: Plan, distance: number): [x: number, y: number] {
  const [machine] = plan.machines;
  if (machine === undefined) throw new Error('the plan has no machine');
  return [machine.x, machine.y - 711 / 2 - distance];
}

/** Faults of the room, the hood and what stands about, on any line of the family that `linePlan` takes. */
export const ROOM_FAULTS: readonly Fault[] = [
  {
    name: 'a heater half in the back of the machine',
    change: (plan) => addThing(plan, 'heater', ...behind(plan, 0), 100, 100, { kind: 'other' }),
    expect: ['stop nothing-overlaps:machine:heater', 'stop service-clearances:back:machine:heater'],
  },
  {
    name: 'a heater 40 mm behind the machine',
    change: (plan) => addThing(plan, 'heater', ...behind(plan, 60), 40, 40, { kind: 'other' }),
    expect: ['stop service-clearances:back:machine:heater'],
  },
  {
    name: 'a column up through the hood',
    change: (plan) => addColumn(plan, 'column', ...behind(plan, 60), 40),
    expect: ['stop nothing-overlaps:hood:column', 'stop service-clearances:back:machine:column'],
  },
  {
    name: 'shelving 50 mm in the wall behind it',
    change: ({ things }) => {
      for (const thing of things.filter(({ ware }) => ware === 'clean')) {
        const back = rotate({ x: 0, y: -60 }, thing.rotationDeg);
        thing.x += back.x;
        thing.y += back.y;
      }
    },
    expect: ['stop inside-room:clean-shelving'],
  },
  {
    name: 'a ceiling under the top of the hood',
    change: ({ room }) => void (room.ceilingHeight = 2400),
    expect: ['stop inside-room:ceiling:hood', 'watch ceiling:height'],
  },
  {
    name: 'a ceiling 10 mm above the open doors, and no hood',
    change: (plan) => {
      plan.room.ceilingHeight = 1890;
      plan.hoods = [];
    },
    expect: ['watch door-lift-clear:machine', 'stop hood-where-needed:machine', 'stop ceiling:height', ...UNHOODED],
  },
  {
    name: 'a hood too short at the front',
    change: (plan) => {
      const hood = hoodOf(plan);
      hood.depth -= 200;
      hood.y -= 100;
    },
    expect: ['stop hood-overhang:front:hood:machine'],
  },
  {
    name: 'a hood hung too high',
    change: (plan) => void (hoodOf(plan).lipHeight = 2300),
    expect: ['stop hood-height:lip:hood:machine'],
  },
  {
    name: 'a hood hung too low for heads',
    change: (plan) => void (hoodOf(plan).lipHeight = 2000),
    expect: ['watch hood-height:head:hood:machine'],
  },
  {
    name: 'a hood whose lip height is not known',
    change: (plan) => void (hoodOf(plan).lipHeight = null),
    expect: ['ask hood-height:lip:hood:machine', 'ask door-lift-clear:machine', 'ask hood-exhaust-enough:hood:machine'],
  },
  {
    name: 'a door of 26 in',
    change: ({ room }) => {
      for (const opening of room.openings) opening.width = 660.4;
    },
    expect: ['stop passable-width:door:machine', 'stop door-passable:width:door'],
  },
  {
    name: 'a narrow shelf for clean ware before the soiled table, where nobody wants a wider aisle',
    cornerOnly: true,
    change: (plan) => {
      plan.settings.aisleWidth = plan.settings.personWidth;
      const place = beforeSoiled(plan, 1300, 560);
      for (const thing of plan.things) if (thing.kind === 'shelving') Object.assign(thing, place, { width: 250, depth: 250 });
    },
    expect: ['watch one-way-flow:shared:machine'],
  },
  { name: 'no door', change: ({ room }) => void (room.openings = []), expect: ['ask passable-width:door:machine'] },
];
