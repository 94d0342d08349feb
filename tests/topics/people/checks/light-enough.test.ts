import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/light-enough';
import { toSI } from '../../../../src/units';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const light = (fc: number | null, code: Plan['codes']['light'] = 'strictest') =>
  linePlan({}, ({ finish, codes }) => {
    finish.light = fc === null ? null : toSI(fc, 'fc');
    codes.light = code;
  });
const is = (verdict: ExpectedFinding['verdict'], fc: number, says?: string): ExpectedFinding[] => [
  { subjects: ['machine'], limit: toSI(20, 'fc'), verdict, measured: toSI(fc, 'fc'), ...(says === undefined ? {} : { says }) },
];

/** 20 fc: FDA Food Code 6-303.11 (secondary); 50 fc: Sonoma County (read); 70 fc: UFC 4-750-01NF 4-4.2 (read). */
describeCheck(check, [
  {
    name: '70 fc, the strictest',
    plan: light(70),
    expect: is('clear', 70, 'The light at the machine is 70 fc; the guide for military kitchens asks for 70 fc.'),
  },
  {
    name: '69 fc, the strictest',
    plan: light(69),
    expect: is(
      'watch',
      69,
      'The light at the machine is 69 fc; the guide for military kitchens asks for 70 fc. Add a lamp that stands steam.',
    ),
  },
  { name: '69 fc, the military guide', plan: light(69, 'military'), expect: is('watch', 69) },
  { name: '50 fc, the county', plan: light(50, 'local'), expect: is('clear', 50) },
  {
    name: '49 fc, the county',
    plan: light(49, 'local'),
    expect: is('watch', 49, 'The light at the machine is 49 fc; some counties ask for 50 fc. Add a lamp that stands steam.'),
  },
  {
    name: '20 fc, the food code',
    plan: light(20, 'food-code'),
    expect: is('clear', 20, 'The light at the machine is 20 fc; the food code asks for 20 fc.'),
  },
  {
    name: '19 fc, the food code',
    plan: light(19, 'food-code'),
    expect: is('stop', 19, 'The light at the machine is 19 fc; 20 fc is needed. Add a lamp that stands steam.'),
  },
  { name: '19 fc, the strictest', plan: light(19), expect: is('stop', 19) },
  {
    name: 'not measured',
    plan: light(null),
    expect: [{ subjects: ['machine'], limit: toSI(20, 'fc'), verdict: 'ask', measured: null, asks: 'finish.light' }],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
