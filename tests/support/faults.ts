import type { LinePlanOptions, Plan, Table } from '../../src/plan';
import { AIR_FAULTS } from './airFaults';
import { CAPACITY_FAULTS } from './capacityFaults';
import { HOOK_UP_FAULTS } from './hookUpFaults';
import { joinBy, linePlan, tableOf } from './linePlan';
import { PEOPLE_FAULTS } from './peopleFaults';
import { ROOM_FAULTS } from './roomFaults';
import { UNHOODED } from './unhooded';
import { WATER_FAULTS } from './waterFaults';

/** One thing wrong with an otherwise clear line, and every finding that is then not clear, as `verdict id`. */
export interface Fault {
  name: string;
  change: (plan: Plan) => void;
  expect: string[];
  /** Only on a corner line, where there is a turn. */
  cornerOnly?: boolean;
  /** The families that it can befall; one that stands for all when it is left out. */
  families?: readonly string[];
}

/** A clear line with one fault, of the family asked for or the first that it can befall. */
export function faultedPlan(options: Partial<LinePlanOptions>, { families, change }: Fault): Plan {
  const [family] = families ?? [];
  return linePlan({ ...(family === undefined ? {} : { family }), ...options }, change);
}

/** The table at the left or right side: its place does not touch the strip of the front that the controls take. */
function sideTable(plan: Plan): Table {
  const table = plan.tables.find(({ place }) => place.kind === 'joined' && place.side !== 'front');
  if (table === undefined) throw new Error('the line has no table at a side');
  return table;
}

/** Sign of an offset or a skew toward the people who stand at a table, away from the wall behind it. */
const towardPeople = (table: Table) => (table.operatorSide === 'right' ? 1 : -1);

const sink = { kind: 'sink', length: 510, width: 510, bowlDepth: 200, spray: true, rackSlide: null, waste: 'indirect' } as const;

export const FAULTS: readonly Fault[] = [
  {
    name: 'controls at the outside of the turn',
    cornerOnly: true,
    change: (plan) => {
      for (const machine of plan.machines) machine.controls = machine.controls === 'front-left' ? 'front-right' : 'front-left';
    },
    expect: ['stop controls-inside-turn:machine', 'stop controls-reachable:cover:machine'],
  },
  {
    name: 'soiled table 20 mm off the machine',
    change: (plan) => joinBy(plan, 'soiled', { gap: 20 }),
    expect: ['stop joint-flush:gap:soiled-table:machine'],
  },
  {
    name: 'clean table 20 mm off the machine',
    change: (plan) => joinBy(plan, 'clean', { gap: 20 }),
    expect: ['stop joint-flush:gap:clean-table:machine'],
  },
  {
    name: 'clean table drawn 0.9 mm into the machine',
    change: (plan) => joinBy(plan, 'clean', { gap: -0.9 }),
    expect: ['stop joint-flush:gap:clean-table:machine'],
  },
  {
    name: 'side table 15 mm out of line',
    change: (plan) => joinBy(plan, sideTable(plan).role, { offset: 15 * towardPeople(sideTable(plan)) }),
    expect: ['stop joint-flush:offset:*:machine'],
  },
  {
    name: 'side table 3° off square',
    change: (plan) => joinBy(plan, sideTable(plan).role, { skewDeg: 3 * towardPeople(sideTable(plan)) }),
    expect: ['stop joint-flush:angle:*:machine'],
  },
  {
    name: 'clean deck 20 mm high',
    change: (plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight: 883.6, fall: 1 / 48 }),
    expect: ['stop joint-flush:deck-step:clean-table:machine'],
  },
  {
    name: 'soiled deck 20 mm low, surveyed',
    change: (plan) => void (tableOf(plan, 'soiled').deck = { kind: 'heights', heights: [843.6, 910] }),
    expect: ['stop joint-flush:deck-step:soiled-table:machine'],
  },
  {
    name: 'clean table falls away',
    change: (plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight: 863.6, fall: -1 / 96 }),
    expect: ['stop table-falls:clean-table'],
  },
  {
    name: 'soiled table level',
    change: (plan) => void (tableOf(plan, 'soiled').deck = { kind: 'fall', jointHeight: 863.6, fall: 0 }),
    expect: ['stop table-falls:soiled-table'],
  },
  {
    name: 'clean table falls a sixteenth per foot',
    change: (plan) => void (tableOf(plan, 'clean').deck = { kind: 'heights', heights: [863.6, 863.6 + 1600 / 192] }),
    expect: ['watch table-falls:clean-table'],
  },
  {
    name: 'fall not surveyed',
    change: (plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight: 863.6, fall: null }),
    expect: ['ask table-falls:clean-table'],
  },
  {
    name: 'ordered in the other hand',
    change: ({ order }) => void (order.hand = order.hand === 'left-to-right' ? 'right-to-left' : 'left-to-right'),
    expect: ['stop order-fits-line:hand:machine'],
  },
  {
    name: 'ordered in the other configuration',
    change: ({ order }) => void (order.configuration = order.configuration === 'straight' ? 'corner' : 'straight'),
    expect: ['stop order-fits-line:configuration:machine'],
  },
  {
    name: 'ordered with heat recovery',
    change: ({ order }) => void (order.vent = 'recovery'),
    expect: ['stop order-fits-machine:vent:machine'],
  },
  {
    name: 'ordered with a tall door',
    change: ({ order }) => void (order.clearOpening = 685.8),
    expect: ['stop order-fits-machine:clear-opening:machine'],
  },
  { name: 'ordered for 600 V', change: ({ order }) => void (order.voltage = 600), expect: ['stop power-agrees:voltage:machine'] },
  { name: 'supplied with 600 V', change: ({ supply }) => void (supply.voltage = 600), expect: ['stop power-agrees:supply:machine'] },
  {
    name: 'the order says nothing of the hand',
    change: ({ order }) => void (order.hand = null),
    expect: ['ask order-fits-line:hand:machine'],
  },
  {
    name: 'a second spray, on the clean table',
    change: (plan) => void tableOf(plan, 'clean').fittings.push({ ...sink, id: 'wrong-sink', at: 1300 }),
    expect: ['stop pre-rinse-side:wrong-sink:clean-table', 'stop fittings-apart:clean-landing:wrong-sink:clean-table'],
  },
  {
    name: 'no spray hose',
    change: (plan) => {
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'sink') fitting.spray = false;
    },
    expect: ['watch pre-rinse-side:soiled-table'],
  },
  {
    name: 'four racks wanted after the machine',
    change: ({ settings }) => void (settings.racksAfter = 4),
    expect: ['watch landing-racks:after:clean-table'],
  },
  {
    name: 'the drop-off over the scrap opening',
    change: (plan) => {
      for (const fitting of tableOf(plan, 'soiled').fittings) if (fitting.kind === 'drop-off') fitting.at -= 150;
    },
    expect: ['stop fittings-apart:scrap:drop-off:soiled-table'],
  },
  { name: 'no clean storage', change: (plan) => void plan.things.splice(0, 1), expect: ['watch line-complete:machine'] },
  { name: 'no hood', change: (plan) => void (plan.hoods = []), expect: ['stop hood-where-needed:machine', ...UNHOODED] },
  {
    name: 'no clean table',
    change: (plan) => void (plan.tables = [tableOf(plan, 'soiled')]),
    expect: ['stop configuration-possible:machine'],
  },
  ...ROOM_FAULTS,
  ...CAPACITY_FAULTS,
  ...AIR_FAULTS,
  ...HOOK_UP_FAULTS,
  ...WATER_FAULTS,
  ...PEOPLE_FAULTS,
];

/** Whether a finding that is not clear is the one expected; `*` stands for any one id. */
export const isExpected = (fault: Fault, found: string) =>
  fault.expect.some((wanted) => new RegExp(`^${wanted.replaceAll('*', '[a-z-]+')}$`).test(found));
