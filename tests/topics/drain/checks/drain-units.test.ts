import { produce } from 'immer';
import { type Codes, type Plan, UNKNOWN_BASINS } from '../../../../src/plan';
import { check } from '../../../../src/topics/drain/checks/drain-units';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { floorSink, hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

const subjects = ['machine', 'floor-drain'];

/** The line without its pre-rinse sink, which would empty into the same floor sink. */
function alone(plan: Plan): void {
  for (const table of plan.tables) table.fittings = table.fittings.filter(({ kind }) => kind !== 'sink');
}

const on = (inches: number, drainUnits: Codes['drainUnits'] = 'strictest', others = alone) =>
  linePlan({}, (plan) => {
    floorSink(plan, { bore: inches * 25.4 });
    plan.codes.drainUnits = drainUnits;
    others(plan);
  });
const withSinks = (inches: number, drainUnits: Codes['drainUnits'] = 'strictest', change: (plan: Plan) => void = () => {}) =>
  on(inches, drainUnits, change);
const potSink = (waste: 'indirect' | 'direct' | null) => (plan: Plan) =>
  addThing(plan, 'sink', 2000, 3000, 2286, 711, { kind: 'three-compartment-sink', basins: { ...UNKNOWN_BASINS, waste } });
/** The machine again, in the middle of the floor, and no pre-rinse sink. */
function again(plan: Plan): void {
  alone(plan);
  const [machine] = plan.machines;
  if (machine !== undefined) plan.machines.push({ ...machine, id: 'second', x: machine.x - 1500, y: machine.y + 1500 });
}
const found = (verdict: 'clear' | 'watch', measured: number, limit: number) => ({ verdict, subjects, measured, limit });

/** 15 gpm: 30 units by IPC and UPC, 15 in Chicago; a branch of 2, 3, 4 in may take 6, 20, 160 (IPC 710.1, secondary). A sink is 3 by IPC (memory) and UPC (secondary), 4 by the old city code (read). */
describeCheck(check, [
  {
    name: '4 in',
    plan: on(4),
    expect: [
      { ...found('clear', 30, 160), says: 'The International code counts 30 fixture units for the machine; a branch of 4″ may take 160.' },
    ],
  },
  {
    name: '3 in',
    plan: on(3),
    expect: [
      {
        ...found('watch', 30, 20),
        says: 'The International code counts 30 fixture units for the machine; a branch of 3″ may take 20. Take a larger branch, or ask the local authority whether the machine counts as a steady flow.',
      },
    ],
  },
  { name: '3 in in Chicago', plan: on(3, 'chicago'), expect: [found('clear', 15, 20)] },
  { name: '2 in in Chicago', plan: on(2, 'chicago'), expect: [found('watch', 15, 6)] },
  { name: '3 in by the Uniform code', plan: on(3, 'upc'), expect: [found('watch', 30, 20)] },
  { name: '2½ in is for the code itself', plan: on(2.5), expect: [{ verdict: 'ask', subjects, measured: null }] },
  {
    name: 'connected directly on 3 in: its own drain counts, not that of the floor sink',
    plan: hookedPlan({ waste: 'direct', drainBore: 76.2 }, alone),
    expect: [{ ...found('watch', 30, 20), subjects: ['machine'] }],
  },
  {
    name: 'the pipe of the floor sink is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'connected directly, the drain is not known',
    plan: hookedPlan({ waste: 'direct', drainBore: null }, alone),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'machines.0.hookUp.waste' }],
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'room.floorDrains' }],
  },
  {
    name: 'the flow of the machine is not known',
    plan: hookedSheetPlan({ drainFlow: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'sheets.0.drainFlow' }],
  },
  {
    name: '10 gpm on 3 in',
    plan: produce(hookedSheetPlan({ drainFlow: toSI(10, 'gpm') }, { drainBore: 76.2, waste: 'direct' }), alone),
    expect: [{ ...found('clear', 20, 20), subjects: ['machine'] }],
  },
  {
    name: 'with the pre-rinse sink on 4 in',
    plan: withSinks(4),
    expect: [
      {
        ...found('clear', 33, 160),
        says: 'The International code counts 33 fixture units for the machine and what else empties into the floor drain; a branch of 4″ may take 160.',
      },
    ],
  },
  { name: 'with the pre-rinse sink on 3 in in Chicago', plan: withSinks(3, 'chicago'), expect: [found('clear', 18, 20)] },
  {
    name: 'with a three-compartment sink as well the branch of 3 in is too small in Chicago',
    plan: withSinks(3, 'chicago', potSink('indirect')),
    expect: [
      {
        ...found('watch', 22, 20),
        says: 'Chicago’s code, for sinks that of an old city, counts 22 fixture units for the machine and what else empties into the floor drain; a branch of 3″ may take 20. Take a larger branch, or ask the local authority whether the machine counts as a steady flow.',
      },
    ],
  },
  { name: 'a sink of which nobody knows counts', plan: withSinks(3, 'chicago', potSink(null)), expect: [found('watch', 22, 20)] },
  { name: 'one that is connected directly does not', plan: withSinks(3, 'chicago', potSink('direct')), expect: [found('clear', 18, 20)] },
  {
    name: 'the sink has a floor drain of its own',
    plan: withSinks(3, 'chicago', (plan) => {
      potSink('indirect')(plan);
      const [first] = plan.room.floorDrains;
      if (first !== undefined) plan.room.floorDrains.push({ ...first, id: 'sink-drain', x: 2000, y: 3000 });
    }),
    expect: [found('clear', 18, 20), { ...found('clear', 4, 20), subjects: ['sink-drain'] }],
  },
  {
    name: 'two machines on one floor sink are one finding',
    plan: on(4, 'strictest', again),
    expect: [
      {
        ...found('clear', 60, 160),
        subjects: ['machine', 'second', 'floor-drain'],
      },
    ],
  },
  {
    name: 'connected directly, the pre-rinse sink and another on a floor drain of 2 in',
    plan: hookedPlan({ waste: 'direct', drainBore: 101.6 }, (plan) => {
      floorSink(plan, { bore: 50.8 });
      potSink('indirect')(plan);
    }),
    expect: [
      {
        ...found('watch', 7, 6),
        subjects: ['floor-drain'],
        says: 'An old city code counts 7 fixture units for the sinks that empty into the floor drain; a branch of 2″ may take 6. Take a larger branch.',
      },
      { ...found('clear', 30, 160), subjects: ['machine'] },
    ],
  },
  {
    name: 'a slow machine of a large tank: the table of an old city code counts most',
    plan: produce(hookedSheetPlan({ drainFlow: toSI(2, 'gpm'), tank: { volume: toSI(40, 'gal'), heater: 3000 } }), alone),
    expect: [
      {
        ...found('clear', 6, 160),
        says: 'An old city code counts 6 fixture units for the machine; a branch of 4″ may take 160.',
      },
    ],
  },
]);
