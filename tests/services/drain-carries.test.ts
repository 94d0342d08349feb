import { check } from '../../src/services/rules/drain-carries';
import { toSI } from '../../src/units';
import { describeCheck } from '../support/cases';
import { hookedPlan, hookedSheetPlan } from '../support/hookUpPlans';

const subjects = ['machine'];
const FLOW = toSI(15, 'gpm');
const found = (verdict: 'clear' | 'watch' | 'stop') => ({ verdict, subjects, measured: FLOW });

/** 15 gpm; half full at n 0.015 and ¼ in/ft: 2 in 8.41 gpm, 3 in 24.8, 4 in 53.4 (computed, W-DM2 to W-DM6); brim full twice as much (W-DP6). */
describeCheck(check, [
  {
    name: '4 in',
    plan: hookedPlan({ drainBore: 101.6 }),
    expect: [{ ...found('clear'), says: 'The machine lets out 15 gpm; its drain carries 53.42 gpm half full.' }],
  },
  { name: '3 in', plan: hookedPlan({ drainBore: 76.2 }), expect: [found('clear')] },
  {
    name: '2 in: more than half full',
    plan: hookedPlan({ drainBore: 50.8 }),
    expect: [
      {
        ...found('watch'),
        says: 'The machine lets out 15 gpm; its drain carries 8.41 gpm half full, as drains are sized, and 16.83 gpm brim full. Take a larger drain.',
      },
    ],
  },
  { name: '1½ in, 7.82 gpm brim full, over a floor sink', plan: hookedPlan({ drainBore: 38.1 }), expect: [found('watch')] },
  {
    name: '1½ in, connected directly',
    plan: hookedPlan({ drainBore: 38.1, waste: 'direct' }),
    expect: [
      {
        ...found('stop'),
        says: 'The machine lets out 15 gpm; its drain carries 7.81 gpm brim full. Take a larger drain, more fall, or a floor sink that holds the rest.',
      },
    ],
  },
  {
    name: 'the drain is not known',
    plan: hookedPlan({ drainBore: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'its fall is not known',
    plan: hookedPlan({ drainSlope: null }),
    expect: [
      {
        verdict: 'ask',
        subjects,
        measured: null,
        asks: 'machines.0.hookUp.drainSlope',
        says: 'To hold it against what the drain carries, say the fall of that drain.',
      },
    ],
  },
  {
    name: 'the flow of the machine is not known',
    plan: hookedSheetPlan({ drainFlow: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'sheets.0.drainFlow' }],
  },
  { name: 'level: the formula does not hold', plan: hookedPlan({ drainSlope: 0 }), expect: [{ verdict: 'ask', subjects, measured: null }] },
]);
