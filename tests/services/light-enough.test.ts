import { createPlan } from '../../src/plan';
import { check } from '../../src/services/rules/light-enough';
import { toSI } from '../../src/units';
import { describeCheck } from '../support/cases';
import { linePlan } from '../support/linePlan';

const light = (fc: number | null) => linePlan({}, ({ finish }) => void (finish.light = fc === null ? null : toSI(fc, 'fc')));
const is = { subjects: ['machine'], limit: toSI(20, 'fc') } as const;

/** 20 fc: FDA Food Code 6-303.11 (L-45, secondary); 50 fc: Sonoma County (L-46, read). */
describeCheck(check, [
  {
    name: '50 fc',
    plan: light(50),
    expect: [{ ...is, verdict: 'clear', measured: toSI(50, 'fc'), says: 'The light at the machine is 50 fc; 20 fc is needed.' }],
  },
  {
    name: '20 fc',
    plan: light(20),
    expect: [
      {
        ...is,
        verdict: 'clear',
        measured: toSI(20, 'fc'),
        says: 'The light at the machine is 20 fc; 20 fc is needed. Some counties ask for 50 fc.',
      },
    ],
  },
  {
    name: '19 fc',
    plan: light(19),
    expect: [
      {
        ...is,
        verdict: 'stop',
        measured: toSI(19, 'fc'),
        says: 'The light at the machine is 19 fc; 20 fc is needed. Add a lamp that stands steam.',
      },
    ],
  },
  { name: 'not measured', plan: light(null), expect: [{ ...is, verdict: 'ask', measured: null, asks: 'finish.light' }] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
