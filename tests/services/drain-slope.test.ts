import { check } from '../../src/services/rules/drain-slope';
import { describeCheck } from '../support/cases';
import { hookedPlan } from '../support/hookUpPlans';

const subjects = ['machine'];
const laid = (inches: number, perFoot: number) => hookedPlan({ drainBore: inches * 25.4, drainSlope: perFoot / 12 });
const found = (verdict: 'clear' | 'stop', perFoot: number, least: number) => ({
  verdict,
  subjects,
  measured: perFoot / 12,
  limit: least / 12,
});

/** Chicago Table 18-29-704.1 (read, W-DP1): ¼ in/ft to 2½ in, ⅛ from 3 to 6 in, 1/16 from 8 in. */
describeCheck(check, [
  { name: '2 in at ¼', plan: laid(2, 0.25), expect: [found('clear', 0.25, 0.25)] },
  {
    name: '2 in at ⅛',
    plan: laid(2, 0.125),
    expect: [
      {
        ...found('stop', 0.125, 0.25),
        says: 'The drain of the machine falls ⅛″ per ft; a pipe of 2″ needs ¼″ per ft. Lay it steeper, or have a plumber take a larger one.',
      },
    ],
  },
  { name: '3 in at ⅛', plan: laid(3, 0.125), expect: [found('clear', 0.125, 0.125)] },
  { name: 'cast iron of 2.96 in at ⅛', plan: laid(2.96, 0.125), expect: [found('clear', 0.125, 0.125)] },
  { name: 'a bore between 2½ and 3 in takes the steeper', plan: laid(2.8, 0.125), expect: [found('stop', 0.125, 0.25)] },
  { name: '4 in at 1/16', plan: laid(4, 0.0625), expect: [found('stop', 0.0625, 0.125)] },
  { name: '8 in at 1/16', plan: laid(8, 0.0625), expect: [found('clear', 0.0625, 0.0625)] },
  { name: 'level', plan: laid(4, 0), expect: [found('stop', 0, 0.125)] },
  {
    name: 'the drain is not known',
    plan: hookedPlan({ drainBore: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainBore' }],
  },
  {
    name: 'its fall is not known',
    plan: hookedPlan({ drainSlope: null }),
    expect: [{ verdict: 'ask', subjects, measured: null, asks: 'machines.0.hookUp.drainSlope' }],
  },
  { name: 'thinner than any drain', plan: laid(1, 0.25), expect: [{ verdict: 'ask', subjects, measured: null }] },
]);
