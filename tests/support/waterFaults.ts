import { type DataSheet, FAMILIES } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { fromSI, toSI } from '../../src/units';
import type { Fault } from './faults';
import { hookUp } from './hookUpPlans';
import { ownDataSheet } from './linePlan';

const f = (value: number) => toSI(value, 'F');
const familiesOf = (is: (sheet: DataSheet) => boolean) => FAMILIES.filter(is).map(({ id }) => id);
const HOT_RINSE = familiesOf(({ sanitizing }) => sanitizing === 'hot-water');
const EVERY = familiesOf(() => true);
const BOOSTED = familiesOf(({ booster }) => booster !== null);
/** A booster of its own with nothing wrong. */
const APART = { boosterPlace: 'apart', boosterWay: 1000, boosterBelow: 200, boosterOffWall: true } as const;

/** The machine of the line with a data sheet of its own. */
function giveSheet(plan: Plan, change: Partial<DataSheet>): void {
  plan.sheets.push(ownDataSheet(change));
  for (const machine of plan.machines) machine.sheet = 'own-sheet';
}

function record(plan: Plan, tempF: number, seconds: number): void {
  for (const { hookUp } of plan.machines) {
    hookUp.plateRecord = [
      { at: 0, tempC: f(tempF) },
      { at: seconds, tempC: f(tempF) },
    ];
  }
}

const flow = (psi: number) => fromSI(toSI(psi, 'psi'), 'kPa');

/** Faults of water and heat, on any line of the families that they can befall. */
export const WATER_FAULTS: readonly Fault[] = [
  {
    name: '30 psi at the stub',
    families: HOT_RINSE,
    change: ({ supply }) => void (supply.flowPressureKpa = flow(30)),
    expect: ['stop pressure-at-machine:machine'],
  },
  {
    name: 'flow pressure not measured',
    change: ({ supply }) => void (supply.flowPressureKpa = null),
    expect: ['ask pressure-at-machine:machine'],
  },
  {
    name: 'a stub in the ceiling of the floor above',
    families: HOT_RINSE,
    change: ({ room }) => {
      for (const stub of room.stubs) if (stub.kind.endsWith('-water')) stub.z = 5500;
    },
    expect: ['stop pressure-at-machine:machine'],
  },
  {
    name: 'a pipe whose bore is not known',
    change: ({ pipes }) => void (pipes.bore = null),
    expect: ['ask pressure-at-machine:machine'],
  },
  {
    name: '40 psi at the stub, and a pipe whose bore is not known',
    families: HOT_RINSE,
    change: ({ supply, pipes }) => {
      supply.flowPressureKpa = flow(40);
      pipes.bore = null;
    },
    expect: ['watch rinse-pressure:machine', 'ask pressure-at-machine:machine'],
  },
  {
    name: '100 psi at rest',
    families: EVERY,
    change: ({ pipes }) => void (pipes.staticPressure = toSI(100, 'psi')),
    expect: ['stop static-pressure'],
  },
  {
    name: 'nothing keeps its water out of the building’s',
    families: EVERY,
    change: (plan) => hookUp(plan, { backflow: 'none' }),
    expect: ['stop supply-backflow:machine'],
  },
  {
    name: 'nobody knows what keeps its water out of the building’s',
    change: (plan) => hookUp(plan, { backflow: null }),
    expect: ['ask supply-backflow:machine'],
  },
  {
    name: 'no thermometers',
    change: (plan) => giveSheet(plan, { thermometers: false }),
    expect: ['stop thermometers:machine'],
  },
  {
    name: 'nobody knows of its thermometers',
    change: (plan) => giveSheet(plan, { thermometers: null }),
    expect: ['ask thermometers:machine'],
  },
  {
    name: 'its water comes out ¾ in above the rim',
    families: EVERY,
    change: (plan) => hookUp(plan, { supplyGap: 19.05 }),
    expect: ['stop supply-backflow:gap:machine'],
  },
  {
    name: 'a booster at the end of a pipe of 6 ft',
    families: BOOSTED,
    change: (plan) => hookUp(plan, { ...APART, boosterWay: 1828.8 }),
    expect: ['watch booster-near:way:machine'],
  },
  {
    name: 'a booster that stands on the floor',
    families: BOOSTED,
    change: (plan) => hookUp(plan, { ...APART, boosterBelow: 0 }),
    expect: ['watch booster-near:floor:machine'],
  },
  {
    name: 'a booster against the wall',
    families: BOOSTED,
    change: (plan) => hookUp(plan, { ...APART, boosterOffWall: false }),
    expect: ['watch booster-near:wall:machine'],
  },
  {
    name: 'nobody knows where the booster stands',
    families: BOOSTED,
    change: (plan) => hookUp(plan, { boosterPlace: null }),
    expect: ['ask booster-near:way:machine'],
  },
  {
    name: 'water of 10 grains',
    families: EVERY,
    change: ({ pipes }) => void (pipes.hardness = toSI(10, 'gpg')),
    expect: ['watch water-hardness'],
  },
  {
    name: 'water that was not tested',
    change: ({ pipes }) => void (pipes.hardness = null),
    expect: ['ask water-hardness'],
  },
  {
    name: 'a machine of 1.1 gal a rack',
    change: (plan) => giveSheet(plan, { rinseWaterL: 4.2 }),
    expect: ['watch water-per-rack-criteria:machine'],
  },
  {
    name: 'a machine of 0.7 kW while it is idle',
    change: (plan) => giveSheet(plan, { idle: 700 }),
    expect: ['watch idle-criteria:machine'],
  },
  {
    name: 'a data sheet without idle power',
    change: (plan) => giveSheet(plan, { idle: null }),
    expect: ['ask idle-criteria:machine'],
  },
  {
    name: 'a wash of 140 °F',
    change: (plan) => giveSheet(plan, { temperatures: { washC: f(140), rinseC: f(180), supplyC: 60 } }),
    expect: ['stop wash-temperature:machine'],
  },
  {
    name: 'a rinse of 170 °F',
    change: (plan) => giveSheet(plan, { temperatures: { washC: f(150), rinseC: f(170), supplyC: 60 } }),
    expect: ['stop rinse-temperature:machine'],
  },
  {
    name: 'a rinse of 200 °F',
    change: (plan) => giveSheet(plan, { temperatures: { washC: f(150), rinseC: f(200), supplyC: 60 } }),
    expect: ['stop rinse-temperature:machine'],
  },
  {
    name: 'hot water of 115 °F',
    families: ['recirculating-hot-water', 'tall-door', 'direct-vent', 'chemical-sanitising'],
    change: ({ supply }) => void (supply.hotWaterC = f(115)),
    expect: ['stop supply-temperature:temperature:machine'],
  },
  {
    name: 'hot water of 130 °F where the sheet is content with 110 °F',
    families: ['fresh-water-hot-water'],
    change: ({ supply }) => void (supply.hotWaterC = f(130)),
    expect: ['watch supply-temperature:temperature:machine'],
  },
  {
    name: 'hot water of 90 °F',
    change: ({ supply }) => void (supply.hotWaterC = f(90)),
    expect: ['stop supply-temperature:temperature:machine', 'stop hand-sink-water:hand-sink', 'watch booster-enough:machine'],
  },
  {
    name: 'heat recovery fed with hot water',
    families: ['heat-recovery'],
    change: ({ machines }) => {
      for (const { hookUp } of machines) hookUp.water = 'hot';
    },
    expect: ['stop supply-temperature:feed:machine'],
  },
  {
    name: 'nobody knows which water it is connected to',
    families: EVERY,
    change: ({ machines }) => {
      for (const { hookUp } of machines) hookUp.water = null;
    },
    expect: ['ask supply-temperature:feed:machine'],
  },
  {
    name: 'a booster of 4 kW',
    change: (plan) => giveSheet(plan, { booster: 4000 }),
    expect: ['watch booster-enough:machine'],
  },
  {
    name: 'a water heater of 3 kW',
    families: EVERY,
    change: ({ pipes }) => void (pipes.heaterPower = 3000),
    expect: ['stop heater-enough'],
  },
  {
    name: 'nobody knows what the store holds',
    change: ({ pipes }) => void (pipes.storage = null),
    expect: ['ask heater-enough'],
  },
  {
    name: 'a heater without a store, as large as one with a store must be',
    families: EVERY,
    change: ({ pipes }) => Object.assign(pipes, { storage: 0, heaterPower: 20_000 }),
    expect: ['stop heater-enough'],
  },
  {
    name: 'a heater without a store that gives 118 °F',
    families: ['heat-recovery'],
    change: ({ pipes, supply }) => {
      Object.assign(pipes, { storage: 0, heaterPower: 500_000 });
      supply.hotWaterC = f(118);
    },
    expect: ['stop heater-enough:temperature'],
  },
  {
    name: 'a machine that does not call for detergent',
    change: (plan) => giveSheet(plan, { connections: ownDataSheet({}).connections.filter(({ kind }) => kind !== 'detergent-signal') }),
    expect: ['watch chemicals-dosed:machine'],
  },
  {
    name: 'a plate that comes to 155 °F for 30 s',
    families: HOT_RINSE,
    change: (plan) => record(plan, 155, 30),
    expect: ['stop heat-units:total:machine', 'stop heat-units:surface:machine'],
  },
];
