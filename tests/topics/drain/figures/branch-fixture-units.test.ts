import { produce } from 'immer';
import { type Codes, type FloorDrain, type Plan, UNKNOWN_BASINS } from '../../../../src/plan';
import { rule } from '../../../../src/topics/drain/figures/branch-fixture-units';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { floorSink, hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';

function alone(plan: Plan): void {
  for (const table of plan.tables) table.fittings = table.fittings.filter(({ kind }) => kind !== 'sink');
}
const potSink =
  (waste: 'indirect' | 'direct' | null, kind: 'three-compartment-sink' | 'hand-sink' = 'three-compartment-sink') =>
  (plan: Plan): void =>
    addThing(plan, 'sink', 2000, 3000, 2286, 711, { kind, basins: { ...UNKNOWN_BASINS, waste } });
const fitted =
  (waste: 'direct' | null) =>
  (plan: Plan): void => {
    for (const { fittings } of plan.tables) for (const one of fittings) if (one.kind === 'sink') one.waste = waste;
  };
const coded = (drainUnits: Codes['drainUnits']) => linePlan({}, ({ codes }) => void (codes.drainUnits = drainUnits));
const draw =
  (change: Partial<FloorDrain>, waste: Partial<FloorDrain['waste']> = {}) =>
  (plan: Plan) =>
    floorSink(plan, waste, change);

/** What each code counts; the one that governs says so. */
const units = (ipc: number, upc: number, chicago: number, old: number, governing = 'ipc', drain = 'floor-drain') =>
  Object.entries({ ipc, upc, 'municipal-old': old, chicago }).map(([part, value]) => ({
    part,
    subjects: [drain],
    value,
    notes: part === governing ? /Governs:.*may take/ : /^(?!.*Governs)/,
  }));

/**
 * A machine of 15 gpm is 30 units by IPC (secondary) and UPC (memory), 15 in Chicago (read), 4 by the table of an old
 * city code (read). The pre-rinse sink is 3 by IPC (memory) and UPC (secondary), which stands for the
 * others too; a three-compartment sink 4 by the old city code (read).
 */
describeFigure(rule, [
  { name: 'the machine and the pre-rinse sink', plan: linePlan(), expect: units(33, 33, 18, 7) },
  { name: 'the machine alone', plan: linePlan({}, alone), expect: units(30, 30, 15, 4) },
  { name: 'with a three-compartment sink', plan: linePlan({}, potSink('indirect')), expect: units(36, 36, 22, 11) },
  {
    name: 'with one of which nobody knows how it empties',
    plan: linePlan({}, potSink(null)),
    expect: units(36, 36, 22, 11).map((row) => ({ ...row, notes: 'A sink that is not said to be connected directly is counted.' })),
  },
  { name: 'one that is connected directly does not count', plan: linePlan({}, potSink('direct')), expect: units(33, 33, 18, 7) },
  { name: 'nor does a pre-rinse sink that is', plan: linePlan({}, fitted('direct')), expect: units(30, 30, 15, 4) },
  {
    name: 'with a pre-rinse sink of which nobody knows how it empties',
    plan: linePlan({}, fitted(null)),
    expect: units(33, 33, 18, 7).map((row) => ({ ...row, notes: 'A sink that is not said to be connected directly is counted.' })),
  },
  { name: 'a hand sink does not', plan: linePlan({}, potSink('indirect', 'hand-sink')), expect: units(33, 33, 18, 7) },
  { name: 'Chicago', plan: coded('chicago'), expect: units(33, 33, 18, 7, 'chicago') },
  { name: 'the Uniform code', plan: coded('upc'), expect: units(33, 33, 18, 7, 'upc') },
  {
    name: 'a slow machine of a large tank: the old table counts most',
    plan: produce(hookedSheetPlan({ drainFlow: toSI(2, 'gpm'), tank: { volume: toSI(40, 'gal'), heater: 3000 } }), alone),
    expect: units(4, 4, 2, 6, 'municipal-old'),
  },
  {
    name: 'a tank beyond the table counts as a flow',
    plan: produce(hookedSheetPlan({ tank: { volume: toSI(120, 'gal'), heater: 3000 } }), alone),
    expect: units(30, 30, 15, 30),
  },
  {
    name: 'connected directly: the pre-rinse sink is left',
    plan: hookedPlan({ waste: 'direct' }),
    expect: units(3, 3, 3, 3),
  },
  {
    name: 'no less than a floor drain of 4 in itself: 2 by IPC and UPC (secondary), 6 by the old table (read)',
    plan: hookedPlan({ waste: 'direct' }, draw({ kind: 'floor-drain' })),
    expect: units(3, 3, 6, 6, 'municipal-old'),
  },
  {
    name: 'a floor drain of 3 in itself is 4 by the old table',
    plan: hookedPlan({ waste: 'direct' }, draw({ kind: 'floor-drain' }, { bore: 76.2 })),
    expect: units(3, 3, 4, 4, 'municipal-old'),
  },
  {
    name: 'a sink with a floor drain of its own',
    plan: linePlan({}, (plan) => {
      potSink('indirect')(plan);
      const [first] = plan.room.floorDrains;
      if (first !== undefined) plan.room.floorDrains.push({ ...first, id: 'sink-drain', x: 2000, y: 3000 });
    }),
    expect: [...units(33, 33, 18, 7), ...units(3, 3, 4, 4, 'municipal-old', 'sink-drain')],
  },
  {
    name: 'the pipe below it not known: nothing is said of what it may take',
    plan: linePlan({}, draw({}, { bore: null })),
    expect: units(33, 33, 18, 7).map((row, i) => ({ ...row, notes: i === 0 ? /Governs: none counts more\.$/ : row.notes })),
  },
  {
    name: 'how the machine’s waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ subjects: ['floor-drain'], value: null, asks: 'machines.0.hookUp.waste' }],
  },
  {
    name: 'the flow of the machine is not known',
    plan: hookedSheetPlan({ drainFlow: null }),
    expect: [{ subjects: ['floor-drain'], value: null, asks: 'sheets.0.drainFlow' }],
  },
  { name: 'nothing empties into it', plan: hookedPlan({ waste: 'direct' }, alone), expect: [] },
  { name: 'no floor drain', plan: linePlan({}, ({ room }) => void (room.floorDrains = [])), expect: [] },
]);
