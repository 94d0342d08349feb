import { check } from '../../../../src/topics/drain/checks/drain-carries';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { floorSink, hookedPlan, hookedSheetPlan } from '../../../support/hookUpPlans';
import { linePlan } from '../../../support/linePlan';

const subjects = ['machine'];
const FLOW = toSI(15, 'gpm');
const found = (verdict: 'clear' | 'watch' | 'stop') => ({ verdict, subjects: ['machine', 'floor-drain'], measured: FLOW });
/** Over the floor sink, whose pipe has so many inches; the machine's own waste pipe stays as it is. */
const over = (inches: number) => linePlan({}, (plan) => floorSink(plan, { bore: inches * 25.4 }));

/** 15 gpm; half full of cast iron, n 0.013, at ¼ in/ft: 1½ in 4.51 gpm, 2 in 9.71, 3 in 28.6, 4 in 61.7; of plastic, n 0.009: 2 in 14.0 (computed); brim full twice as much. */
describeCheck(check, [
  {
    name: '4 in below the floor sink',
    plan: over(4),
    expect: [{ ...found('clear'), says: 'The machine lets out 15 gpm; the pipe of the floor drain carries 61.64 gpm half full.' }],
  },
  { name: '3 in', plan: over(3), expect: [found('clear')] },
  {
    name: '2 in: more than half full',
    plan: over(2),
    expect: [
      {
        ...found('watch'),
        says: 'The machine lets out 15 gpm; the pipe of the floor drain carries 9.71 gpm half full, as drains are sized, and 19.42 gpm brim full. Take a larger drain.',
      },
    ],
  },
  { name: '1½ in, 9.02 gpm brim full, which the floor sink may hold', plan: over(1.5), expect: [found('watch')] },
  {
    name: 'a waste pipe of 1½ in over a floor sink on 4 in: the pipe below the sink counts',
    plan: hookedPlan({ drainBore: 38.1 }),
    expect: [found('clear')],
  },
  {
    name: '3 in at ⅛ in/ft of cast iron, 20.2 gpm half full',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: 76.2, slope: 1 / 96 })),
    expect: [found('clear')],
  },
  {
    name: '2 in of plastic, 14.0 gpm half full',
    plan: hookedPlan({ drainMaterial: 'plastic' }, (plan) => floorSink(plan, { bore: 50.8 })),
    expect: [
      {
        ...found('watch'),
        says: 'The machine lets out 15 gpm; the pipe of the floor drain carries 14.02 gpm half full, as drains are sized, and 28.05 gpm brim full. Take a larger drain.',
      },
    ],
  },
  {
    name: 'of two drains the nearer one',
    plan: linePlan({}, (plan) => {
      const [drain] = plan.room.floorDrains;
      if (drain !== undefined)
        plan.room.floorDrains.push({ ...drain, id: 'far', y: drain.y + 2000, waste: { ...drain.waste, bore: 38.1 } });
    }),
    expect: [found('clear')],
  },
  {
    name: '1½ in, connected directly: the pipe below the floor sink does not count',
    plan: hookedPlan({ drainBore: 38.1, waste: 'direct' }),
    expect: [
      {
        verdict: 'stop',
        subjects,
        measured: FLOW,
        says: 'The machine lets out 15 gpm; its drain carries 9.02 gpm brim full. Take a larger drain, more fall, or a floor sink that holds the rest.',
      },
    ],
  },
  {
    name: 'the pipe of the floor sink is not known',
    plan: linePlan({}, (plan) => floorSink(plan, { bore: null })),
    expect: [
      {
        verdict: 'ask',
        subjects: ['machine', 'floor-drain'],
        measured: null,
        asks: 'room.floorDrains.0.waste.bore',
        says: 'To hold it against what the drain carries, say the inside diameter of the floor drain’s pipe.',
      },
    ],
  },
  {
    name: 'nor its fall',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: null })),
    expect: [{ verdict: 'ask', subjects: ['machine', 'floor-drain'], measured: null, asks: 'room.floorDrains.0.waste.slope' }],
  },
  {
    name: 'connected directly, the drain is not known',
    plan: hookedPlan({ drainBore: null, waste: 'direct' }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'connected directly, its fall is not known',
    plan: hookedPlan({ drainSlope: null, waste: 'direct' }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  {
    name: 'how the waste is connected is not known',
    plan: hookedPlan({ waste: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.waste' }],
  },
  {
    name: 'no drain drawn',
    plan: linePlan({}, ({ room }) => void (room.floorDrains = [])),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'room.floorDrains' }],
  },
  {
    name: 'the flow of the machine is not known',
    plan: hookedSheetPlan({ drainFlow: null }),
    expect: [{ verdict: 'ask', subjects: ['machine', 'floor-drain'], measured: null, asks: 'sheets.0.drainFlow' }],
  },
  {
    name: 'level: the formula does not hold',
    plan: linePlan({}, (plan) => floorSink(plan, { slope: 0 })),
    expect: [{ verdict: 'ask', subjects: ['machine', 'floor-drain'], measured: null }],
  },
]);
