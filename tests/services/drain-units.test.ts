import type { Codes } from '../../src/plan';
import { check } from '../../src/services/rules/drain-units';
import { toSI } from '../../src/units';
import { describeCheck } from '../support/cases';
import { floorSink, hookedPlan, hookedSheetPlan } from '../support/hookUpPlans';
import { linePlan } from '../support/linePlan';

const subjects = ['machine', 'floor-drain'];
const on = (inches: number, drainUnits: Codes['drainUnits'] = 'strictest') =>
  linePlan({}, (plan) => {
    floorSink(plan, { bore: inches * 25.4 });
    plan.codes.drainUnits = drainUnits;
  });
const found = (verdict: 'clear' | 'watch', measured: number, limit: number) => ({ verdict, subjects, measured, limit });

/** 15 gpm: 30 units by IPC and UPC, 15 in Chicago (W-D1 to W-D3); a branch of 2, 3, 4 in may take 6, 20, 160 (IPC 710.1, secondary, W-DP3). */
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
        says: 'The International code counts 30 fixture units for the machine; a branch of 3″ may take 20. Take a larger branch, or ask the local authority whether it counts as a steady flow.',
      },
    ],
  },
  { name: '3 in in Chicago', plan: on(3, 'chicago'), expect: [found('clear', 15, 20)] },
  { name: '2 in in Chicago', plan: on(2, 'chicago'), expect: [found('watch', 15, 6)] },
  { name: '3 in by the Uniform code', plan: on(3, 'upc'), expect: [found('watch', 30, 20)] },
  { name: '2½ in is for the code itself', plan: on(2.5), expect: [{ verdict: 'ask', subjects, measured: null }] },
  {
    name: 'connected directly on 3 in: its own drain counts, not that of the floor sink',
    plan: hookedPlan({ waste: 'direct', drainBore: 76.2 }),
    expect: [{ ...found('watch', 30, 20), subjects: ['machine'] }],
  },
  {
    name: 'the pipe of the floor sink is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'connected directly, the drain is not known',
    plan: hookedPlan({ waste: 'direct', drainBore: null }),
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
    plan: hookedSheetPlan({ drainFlow: toSI(10, 'gpm') }, { drainBore: 76.2, waste: 'direct' }),
    expect: [{ ...found('clear', 20, 20), subjects: ['machine'] }],
  },
]);
