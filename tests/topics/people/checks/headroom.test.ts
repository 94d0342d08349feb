import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/headroom';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { canopyAtDoor } from '../../../support/peopleFaults';

const canopy = (lipHeight: number, change: Partial<Plan['hoods'][number]> = {}) =>
  linePlan({}, (plan) => void plan.hoods.push({ ...canopyAtDoor(plan, lipHeight), ...change }));
const found = { subjects: ['low-hood'], limit: 2032 } as const;

/** 6 ft 8 in: 29 CFR 1910.36(g)(1) (secondary). */
describeCheck(check, [
  { name: 'a whole line: its hood is over the operator, and has a check for that', plan: linePlan(), expect: [] },
  { name: 'just 6 ft 8 in over the way in', plan: canopy(2032), expect: [{ ...found, verdict: 'clear', measured: 2032 }] },
  {
    name: '6 ft 4 in over the way in',
    plan: canopy(1930.4),
    expect: [
      {
        ...found,
        verdict: 'watch',
        measured: 1930.4,
        says: 'The lip of hood 5 is 6′ 4″ above the floor where people must pass, 4″ too low for heads. Raise it, or free a way beside it.',
      },
    ],
  },
  {
    // In the middle of the floor: 900 × 500 at 2200, 2400, with ways of 36 in on all sides.
    name: '6 ft 4 in over floor that people walk around',
    plan: canopy(1930.4, { x: 2300, y: 2400, width: 900, depth: 500 }),
    expect: [
      {
        subjects: ['low-hood'],
        limit: true,
        verdict: 'clear',
        measured: true,
        says: 'The lip of hood 5 is 6′ 4″ above the floor, and nobody must pass under it.',
      },
    ],
  },
  {
    name: '6 ft 4 in over the place before the drop-off',
    plan: canopy(1930.4, { x: 1700, y: 1250, width: 900, depth: 600 }),
    expect: [{ ...found, verdict: 'watch', measured: 1930.4 }],
  },
  {
    name: 'a lip of unknown height is asked for elsewhere',
    plan: linePlan({}, (plan) => void plan.hoods.push({ ...canopyAtDoor(plan, 0), lipHeight: null })),
    expect: [],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
