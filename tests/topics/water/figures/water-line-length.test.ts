import { rule } from '../../../../src/topics/water/figures/water-line-length';
import { describeFigure } from '../../../support/figureCases';
import { sheetPlan } from '../../../support/figurePlans';
import { linePlan } from '../../../support/linePlan';
import { printedLine } from '../../../support/waterPlans';

const subjects = ['machine', 'hot-water-stub'];

/** At right angles, as pipes run: common practice. */
describeFigure(rule, [
  // The stub of the line stands 50 mm beside the inlet, 168.5 mm behind it and 130 mm above it.
  { name: 'as drawn', plan: linePlan(), expect: [{ subjects, value: 0.3485, notes: 'right angles' }] },
  { name: 'three stretches of 10 ft', plan: printedLine(), expect: [{ subjects, value: 9.144 }] },
  {
    name: 'a cold-fed machine takes the cold stub',
    plan: linePlan({ family: 'heat-recovery' }),
    expect: [{ subjects: ['machine', 'cold-water-stub'], value: 0.3485 }],
  },
  {
    name: 'the nearer of two',
    plan: linePlan({}, ({ room }) => {
      const hot = room.stubs.find(({ kind }) => kind === 'hot-water');
      if (hot !== undefined) room.stubs.unshift({ ...hot, id: 'far-stub', z: 2000 });
    }),
    expect: [{ subjects, value: 0.3485 }],
  },
  {
    name: 'no hot stub',
    plan: linePlan({}, ({ room }) => void (room.stubs = room.stubs.filter(({ kind }) => kind !== 'hot-water'))),
    expect: [{ subjects: ['machine'], value: null, asks: 'room.stubs' }],
  },
  {
    name: 'a data sheet without a water connection',
    plan: sheetPlan({ connections: [] }),
    expect: [{ subjects: ['machine'], value: null, asks: 'sheets.0.connections' }],
  },
  {
    name: 'connected to the cold stub, by mistake: 50 mm the other way',
    plan: linePlan({}, ({ machines: [machine] }) => {
      if (machine !== undefined) machine.hookUp.water = 'cold';
    }),
    expect: [{ subjects: ['machine', 'cold-water-stub'], value: 0.3485 }],
  },
]);
