import { FAMILIES, findFamily } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import type { Fault } from './faults';
import { floorSink, hookUp } from './hookUpPlans';
import { addThing } from './roomPlan';

/** A machine that empties into nothing but its own drain: the floor sink near it is there all the same. */
const directly = (plan: Plan) => hookUp(plan, { waste: 'direct', drainBore: 101.6 });

/** Square to the front of the unturned machine, before its controls. */
function beforeControls(plan: Plan, distance: number): [x: number, y: number] {
  const [machine] = plan.machines;
  if (machine === undefined) throw new Error('the plan has no machine');
  const sign = machine.controls === 'front-left' ? -1 : 1;
  return [machine.x + sign * 335, machine.y + 711 / 2 + distance];
}

/** The machine with a data sheet of its own, whose drain comes out higher. */
function raiseDrain(plan: Plan, z: number): void {
  for (const machine of plan.machines) {
    const family = findFamily(machine.sheet);
    if (family === undefined) throw new Error(`there is no family ${machine.sheet}`);
    const connections = family.connections.map((one) => (one.kind === 'drain' ? { ...one, z } : one));
    plan.sheets.push({ ...family, id: 'own-sheet', connections });
    machine.sheet = 'own-sheet';
  }
}

/** Faults of drain and power, on any line of every family. */
export const HOOK_UP_FAULTS: readonly Fault[] = rows().map((fault) => ({ families: FAMILIES.map(({ id }) => id), ...fault }));

function rows(): Fault[] {
  return [
    {
      name: 'a pipe of 2 in below the floor sink',
      change: (plan) => floorSink(plan, { bore: 50.8 }),
      expect: ['watch drain-carries:machine:floor-drain', 'watch drain-units:machine:floor-drain'],
    },
    {
      name: 'a drain of 1½ in, connected directly',
      change: (plan) => {
        directly(plan);
        hookUp(plan, { drainBore: 38.1 });
      },
      expect: ['stop drain-carries:machine', 'ask drain-units:machine', 'stop drain-size:outlet:machine', 'watch drain-size:tank:machine'],
    },
    {
      name: 'a waste pipe of 1½ in on an outlet of 2 in',
      change: (plan) => hookUp(plan, { drainBore: 38.1 }),
      expect: ['stop drain-size:outlet:machine', 'watch drain-size:tank:machine'],
    },
    {
      name: 'a waste pipe that falls a sixteenth per foot',
      change: (plan) => hookUp(plan, { drainSlope: 1 / 192 }),
      expect: ['stop drain-slope:waste-pipe:machine'],
    },
    {
      name: 'a pipe below the floor sink that falls a sixteenth per foot',
      change: (plan) => floorSink(plan, { slope: 1 / 192 }),
      expect: ['stop drain-slope:machine:floor-drain'],
    },
    {
      name: 'a pipe of 3 in below the floor sink where 30 units are counted',
      change: (plan) => floorSink(plan, { bore: 76.2 }),
      expect: ['watch drain-units:machine:floor-drain'],
    },
    { name: 'an air gap of an inch', change: (plan) => hookUp(plan, { airGap: 25.4 }), expect: ['stop waste-air-gap:machine'] },
    {
      name: 'the waste not known',
      change: (plan) => hookUp(plan, { waste: null }),
      expect: ['drain-carries', 'drain-slope', 'drain-units', 'waste-air-gap', 'receptor-holds'].map((id) => `ask ${id}:machine`),
    },
    {
      name: 'connected directly beside a drain without a trap',
      change: (plan) => {
        directly(plan);
        floorSink(plan, { trapped: false });
      },
      expect: ['stop waste-direct:machine'],
    },
    {
      name: 'connected directly, and nobody knows whether the trap beside it is vented',
      change: (plan) => {
        directly(plan);
        floorSink(plan, { vented: null });
      },
      expect: ['ask waste-direct:machine:floor-drain'],
    },
    {
      name: 'a drain that comes out 5 ft above the floor, and no trap in its pipe',
      change: (plan) => {
        raiseDrain(plan, 1524);
        hookUp(plan, { wasteTrapped: false });
      },
      expect: ['stop drain-near:trap:machine:floor-drain'],
    },
    {
      name: 'the floor drain under the machine',
      change: (plan) => {
        const [machine] = plan.machines;
        if (machine !== undefined) floorSink(plan, {}, { x: machine.x, y: machine.y });
      },
      expect: ['watch drain-near:reach:machine:floor-drain:machine'],
    },
    {
      name: 'a floor sink of a litre with a pipe of 1½ in',
      change: (plan) => floorSink(plan, { bore: 38.1, volume: 0.001 }),
      expect: [
        'stop receptor-holds:machine:floor-drain',
        'watch drain-carries:machine:floor-drain',
        'ask drain-units:machine:floor-drain',
        'stop drain-size:branch:floor-drain',
      ],
    },
    {
      name: 'a breaker of 15 A',
      change: (plan) => hookUp(plan, { breakerA: 15 }),
      expect: ['stop breaker-size:rating:machine'],
    },
    { name: 'wire of 14 AWG', change: (plan) => hookUp(plan, { wire: '14' }), expect: ['stop wire-carries:machine'] },
    {
      name: 'the panel 150 m away',
      change: (plan) => hookUp(plan, { wireWay: 150_000 }),
      expect: ['watch voltage-drop:machine'],
    },
    {
      name: 'a fan on the vent signal',
      change: (plan) => hookUp(plan, { ventSignal: 'motor' }),
      expect: ['stop signals-drive-contactors:vent:machine'],
    },
    {
      name: 'a small bin 35 in before the controls',
      change: (plan) => addThing(plan, 'wrong-bin', ...beforeControls(plan, 889 + 20), 40, 40, { kind: 'bin' }),
      expect: ['watch working-space:controls:machine:wrong-bin'],
    },
    {
      name: 'a small bin 38 in before the controls, and nobody knows how the supply is earthed',
      families: FAMILIES.filter(({ electrical }) => (electrical[0]?.voltage ?? 0) > 150).map(({ id }) => id),
      change: (plan) => {
        plan.supply.toGroundV = null;
        addThing(plan, 'wrong-bin', ...beforeControls(plan, 965 + 20), 40, 40, { kind: 'bin' });
      },
      expect: ['ask working-space:controls:machine'],
    },
  ];
}
