import { check } from '../../../../src/topics/duct/checks/run-equivalent-length';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';

/** Of the family: 50 ft (15 240) in all, each elbow 10 ft (3048) of it; the collar is at 4318.5, 288.5, 1930 and points up. */
const run = { subjects: ['run', 'machine'], limit: 15_240 } as const;
const clear = (measured: number): ExpectedFinding[] => [{ ...run, verdict: 'clear', measured }];

const COLLAR = { x: 4318.5, y: 288.5, z: 1930 };
const FOOT = 304.8;

/** A run from the collar by steps of right, down the paper and up. */
const runBy = (...steps: [dx: number, dy: number, dz: number][]) =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    let at = COLLAR;
    runOf(plan).points = steps.map(([dx, dy, dz]) => {
      at = { x: at.x + dx, y: at.y + dy, z: at.z + dz };
      return at;
    });
  });

describeCheck(check, [
  {
    name: 'up 670, back 688.5, one elbow',
    plan: runBy([0, 0, 670], [0, -688.5, 0]),
    expect: [
      {
        ...run,
        verdict: 'clear',
        measured: 670 + 688.5 + 3048,
        says: 'The run counts as 14′ 5 ½″: 4′ 5 ½″ and 1 elbow. 50′ 0″ is the limit, 35′ 6 ½″ is left.',
      },
    ],
  },
  { name: 'straight up has no elbow', plan: runBy([0, 0, 3000]), expect: clear(3000) },
  { name: 'leaving the collar sideways begins with an elbow', plan: runBy([0, -1000, 0]), expect: clear(1000 + 3048) },
  { name: 'a point on a straight way is no elbow', plan: runBy([0, 0, 1000], [0, 0, 1000]), expect: clear(2000) },
  {
    name: 'two bends of 45° count 0.60 each by the table, which is more than in proportion',
    plan: runBy([0, 0, 1000], [0, -1000, 1000], [0, 0, 1000]),
    expect: clear(2000 + 1000 * Math.SQRT2 + 1.2 * 3048),
  },
  {
    name: 'a bend of 60° counts 0.78',
    plan: runBy([0, 0, 1000], [0, -Math.sqrt(3) * 500, 500]),
    expect: clear(2000 + 0.78 * 3048),
  },
  {
    name: 'a bend of 135° counts in proportion, 1.5, which is more than the table’s 1.2',
    plan: runBy([0, 0, 2000], [0, -500, -500]),
    expect: clear(2000 + 500 * Math.SQRT2 + 1.5 * 3048),
  },
  {
    name: '20 ft and three elbows: just 50 ft',
    plan: runBy([0, 0, 2 * FOOT], [-8 * FOOT, 0, 0], [0, 5 * FOOT, 0], [-5 * FOOT, 0, 0]),
    expect: [
      {
        ...run,
        verdict: 'clear',
        measured: 15_240,
        says: 'The run counts as 50′ 0″: 20′ 0″ and 3 elbows. 50′ 0″ is the limit, 0″ is left.',
      },
    ],
  },
  {
    name: '1 mm more',
    plan: runBy([0, 0, 2 * FOOT + 1], [-8 * FOOT, 0, 0], [0, 5 * FOOT, 0], [-5 * FOOT, 0, 0]),
    expect: [{ ...run, verdict: 'stop', measured: 15_241 }],
  },
  {
    name: '20 ft and five elbows: two elbows too many',
    plan: runBy([0, 0, 2 * FOOT], [-4 * FOOT, 0, 0], [0, 4 * FOOT, 0], [-4 * FOOT, 0, 0], [0, 4 * FOOT, 0], [-2 * FOOT, 0, 0]),
    expect: [
      {
        ...run,
        verdict: 'stop',
        measured: 70 * FOOT,
        says: 'The run counts as 70′ 0″: 20′ 0″ and 5 elbows. That is 20′ 0″ over, which is two elbows. Shorten it or take bends out.',
      },
    ],
  },
  {
    name: '65 ft straight and one elbow: more than two elbows over',
    plan: runBy([0, 0, 2 * FOOT], [-63 * FOOT, 0, 0]),
    expect: [
      {
        ...run,
        verdict: 'stop',
        measured: 75 * FOOT,
        says: 'The run counts as 75′ 0″: 65′ 0″ and 1 elbow. That is 25′ 0″ over, more than two elbows. Shorten it or take bends out.',
      },
    ],
  },
  {
    name: 'no run drawn',
    plan: linePlan({ family: 'direct-vent' }, (plan) => {
      plan.runs = [];
    }),
    expect: [
      {
        verdict: 'ask',
        subjects: ['machine'],
        measured: null,
        limit: 15_240,
        asks: 'runs',
        says: 'The machine vents through a run of its own, and none is drawn. Draw it; it may count as 50′ 0″.',
      },
    ],
  },
  { name: 'a machine under a hood has no run of its own', plan: linePlan(), expect: [] },
]);
