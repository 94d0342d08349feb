import { check } from '../../../../src/topics/drain/checks/receptor-holds';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { floorSink, hookedPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine', 'floor-drain'];
/** 30 L at 15 gpm into 1½ in at ¼ in/ft, which carries 9.02 gpm full at n 0.013, cast iron (computed). */
const MUST = 0.03 * (1 - 9.02 / 15);
const sink = (volume: number | null, bore = 38.1) => linePlan({}, (plan) => floorSink(plan, { bore, volume }));

describeCheck(check, [
  { name: 'a sink of 16 L', plan: sink(0.016), expect: [{ verdict: 'clear', subjects, measured: 0.016 }] },
  {
    name: 'a sink of 8 L',
    plan: sink(0.008),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: 0.008,
        says: 'While the machine empties, 3.16 gal gather in the floor sink, which holds 2.11 gal. Take a larger floor sink or a larger pipe below it.',
      },
    ],
  },
  { name: 'just enough, and a little less', plan: sink(MUST + 2e-5), expect: [{ verdict: 'clear', subjects, measured: MUST + 2e-5 }] },
  { name: 'a little less', plan: sink(MUST - 2e-5), expect: [{ verdict: 'stop', subjects, measured: MUST - 2e-5 }] },
  {
    name: 'what it holds is not known',
    plan: sink(null),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains.0.waste.volume' }],
  },
  {
    name: 'the pipe keeps up, so that it does not matter',
    plan: sink(null, 76.2),
    expect: [
      { verdict: 'clear', subjects, measured: 0, limit: 0, says: 'The pipe below the floor sink keeps up with the machine as it empties.' },
    ],
  },
  {
    name: 'the pipe is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains.0.waste.bore' }],
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', subjects: ['machine'], measured: null, asks: 'room.floorDrains' }],
  },
  { name: 'connected directly', plan: hookedPlan({ waste: 'direct' }), expect: [] },
  {
    name: 'gallons as they read',
    plan: sink(toSI(3, 'gal'), 76.2),
    expect: [{ verdict: 'clear', subjects, measured: toSI(3, 'gal'), limit: 0 }],
  },
]);
