import { check } from '../../../../src/topics/hood/checks/hood-overhang';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf, setOverhang } from '../../../support/roomPlan';

/** 6 in. In the corner the right side and the back are against walls (125.5 and 138.5), so left and front are open. */
const subjects = ['hood', 'machine'];
const left: ExpectedFinding = { part: 'left', verdict: 'clear', subjects, measured: 305, limit: 152.4 };
const front: ExpectedFinding = { part: 'front', verdict: 'clear', subjects, measured: 305, limit: 152.4 };

const overhang = (toLeft: number, toFront: number) => linePlan({}, (plan) => setOverhang(plan, toLeft, 105, toFront, 118));

describeCheck(check, [
  {
    name: 'a corner against two walls has two open sides, both with a table',
    plan: linePlan(),
    expect: [{ ...left, says: 'The hood stands 1′ 0″ beyond the machine at its left side; 6″ is needed.' }, front],
  },
  {
    name: 'straight through has three',
    plan: linePlan({ configuration: 'straight' }),
    expect: [left, { ...left, part: 'right' }, front],
  },
  {
    name: 'just 6 in',
    plan: overhang(152.4, 152.4),
    expect: [
      { ...left, measured: 152.4 },
      { ...front, measured: 152.4 },
    ],
  },
  {
    name: 'a little less on one side',
    plan: overhang(152, 152.4),
    expect: [
      { ...left, verdict: 'stop', measured: 152, repairs: ['fit-hood'] },
      { ...front, measured: 152.4 },
    ],
  },
  {
    name: '4 in before the front',
    plan: overhang(305, 101.6),
    expect: [
      {
        ...front,
        verdict: 'stop',
        measured: 101.6,
        repairs: ['fit-hood'],
        says: 'The hood stands only 4″ beyond the machine at its front. Bring its edge out 2″.',
      },
      left,
    ],
  },
  {
    name: 'smaller than the machine',
    plan: overhang(-50.8, -101.6),
    expect: [
      {
        ...left,
        verdict: 'stop',
        measured: -50.8,
        repairs: ['fit-hood'],
        says: 'The hood ends 2″ short of the machine at its left side. Bring its edge out 8″.',
      },
      { ...front, verdict: 'stop', measured: -101.6, repairs: ['fit-hood'] },
    ],
  },
  {
    name: 'a hood drawn a quarter turn round is measured the same',
    plan: linePlan({}, (plan) => {
      setOverhang(plan, 305, 105, 100, 118);
      const hood = hoodOf(plan);
      Object.assign(hood, { rotationDeg: 90, width: hood.depth, depth: hood.width });
    }),
    expect: [{ ...front, verdict: 'stop', measured: 100, repairs: ['fit-hood'] }, left],
  },
  {
    name: 'of two hoods over it the better is measured',
    plan: linePlan({}, (plan) => {
      plan.hoods.unshift({ ...hoodOf(plan), id: 'small-hood', width: 300, depth: 300 });
    }),
    expect: [left, front],
  },
  {
    name: 'no hood: said elsewhere',
    plan: linePlan({}, (plan) => {
      plan.hoods = [];
    }),
    expect: [],
  },
  { name: 'a machine that needs none', plan: linePlan({ family: 'heat-recovery' }), expect: [] },
]);
