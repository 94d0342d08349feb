import { rule } from '../../../../src/topics/duct/figures/run-equivalent-length';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { runOf } from '../../../support/roomPlan';

const subjects = ['run', 'machine'];
const COLLAR = { x: 4318.5, y: 288.5, z: 1930 };
const FOOT = 304.8;

/** A run from the collar by steps of right, down the paper and up. Of the family: 50 ft in all, each elbow 10 ft of it. */
const runBy = (...steps: [dx: number, dy: number, dz: number][]) =>
  linePlan({ family: 'direct-vent' }, (plan) => {
    let at = COLLAR;
    runOf(plan).points = steps.map(([dx, dy, dz]) => {
      at = { x: at.x + dx, y: at.y + dy, z: at.z + dz };
      return at;
    });
  });

describeFigure(rule, [
  {
    // Common practice for direct vents: each elbow 10 ft of at most 50 ft; 30 ft and two elbows are 50 ft.
    name: '30 ft and two elbows are 50 ft',
    plan: runBy([0, 0, 5 * FOOT], [-15 * FOOT, 0, 0], [0, 0, 10 * FOOT]),
    expect: [{ subjects, value: 15.24, notes: '100 %' }],
  },
  { name: 'straight up has no elbow', plan: runBy([0, 0, 3000]), expect: [{ subjects, value: 3, notes: '20 %' }] },
  {
    name: 'two bends of 45° count 0.60 each',
    plan: runBy([0, 0, 1000], [0, -1000, 1000], [0, 0, 1000]),
    expect: [{ subjects, value: 2 + Math.SQRT2 + 1.2 * 3.048 }],
  },
  {
    name: 'no run drawn',
    plan: linePlan({ family: 'direct-vent' }, (plan) => {
      plan.runs = [];
    }),
    expect: [{ subjects: ['machine'], value: null, asks: 'runs' }],
  },
  { name: 'a machine under a hood has none', plan: linePlan(), expect: [] },
]);
