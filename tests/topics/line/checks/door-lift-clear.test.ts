import { check } from '../../../../src/topics/line/checks/door-lift-clear';
import { describeCheck } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';
import { addShelf, hoodOf, runOf, setOverhang } from '../../../support/roomPlan';

/** Of the family: doors rise to 1880, 25 is wanted above them, the body is 1473 high. The hood hangs from 2063.6 to 2513.6. */
const machine = { subjects: ['machine'], limit: 0 } as const;

const underCeiling = (height: number | null) =>
  linePlan({}, (plan) => {
    plan.hoods = [];
    plan.room.ceilingHeight = height;
  });

/** The hood moved so that its left edge crosses over the machine. */
const edgeOver = (lipHeight: number) =>
  linePlan({}, (plan) => {
    setOverhang(plan, -200, 105, 305, 118);
    hoodOf(plan).lipHeight = lipHeight;
  });

const shelfOver = (height: number, hasHood = false) =>
  linePlan({}, (plan) => {
    if (!hasHood) plan.hoods = [];
    addShelf(tableOf(plan, 'clean'), -200, 400, height);
  });

describeCheck(check, [
  {
    name: 'doors rise into the hood, up to its top at 2513.6',
    plan: linePlan(),
    expect: [
      {
        ...machine,
        verdict: 'clear',
        measured: 633.6,
        says: 'The open doors of the machine rise to 6′ 2″; 2′ 0 ¹⁵⁄₁₆″ is left under the top of the hood.',
      },
    ],
  },
  { name: 'a ceiling with just the free height', plan: underCeiling(1905), expect: [{ ...machine, verdict: 'clear', measured: 25 }] },
  {
    name: 'a ceiling 1 mm lower',
    plan: underCeiling(1904),
    expect: [
      {
        ...machine,
        verdict: 'watch',
        measured: 24,
        says: 'The open doors of the machine rise to 6′ 2″; ¹⁵⁄₁₆″ is left under the ceiling, 1″ is wanted.',
      },
    ],
  },
  { name: 'a ceiling that the doors just reach', plan: underCeiling(1880), expect: [{ ...machine, verdict: 'watch', measured: 0 }] },
  {
    name: 'a ceiling that the doors hit',
    plan: underCeiling(1829.2),
    expect: [
      {
        ...machine,
        verdict: 'stop',
        measured: -50.8,
        says: 'The open doors of the machine rise to 6′ 2″; the ceiling is 2″ lower. Raise it, or take it away from over the machine.',
      },
    ],
  },
  {
    name: 'no ceiling height',
    plan: underCeiling(null),
    expect: [{ ...machine, verdict: 'ask', measured: null, asks: 'room.ceilingHeight' }],
  },
  {
    name: 'no ceiling height, but a hood over the whole machine: the ceiling is above it',
    plan: linePlan({}, (plan) => {
      plan.room.ceilingHeight = null;
    }),
    expect: [{ ...machine, verdict: 'clear', measured: 633.6 }],
  },
  {
    name: 'a hood whose lip height is not known',
    plan: linePlan({}, (plan) => {
      hoodOf(plan).lipHeight = null;
    }),
    expect: [{ ...machine, verdict: 'ask', measured: null, asks: 'hoods.0.lipHeight' }],
  },
  {
    name: 'a hood whose lip height is not known, under a ceiling that is too low in any case',
    plan: linePlan({}, (plan) => {
      hoodOf(plan).lipHeight = null;
      plan.room.ceilingHeight = 1870;
    }),
    expect: [{ ...machine, verdict: 'stop', measured: -10 }],
  },
  {
    name: 'the edge of the hood over the machine, 10 mm above the open doors',
    plan: edgeOver(1890),
    expect: [{ ...machine, verdict: 'watch', subjects: ['machine', 'hood'], measured: 10 }],
  },
  {
    name: 'the edge of the hood in the way of the doors',
    plan: edgeOver(1860),
    expect: [{ ...machine, verdict: 'stop', subjects: ['machine', 'hood'], measured: -20 }],
  },
  {
    name: 'a shelf over the machine, in the way of the doors, with room to raise it',
    plan: shelfOver(1850),
    expect: [
      {
        ...machine,
        verdict: 'stop',
        subjects: ['machine', 'clean-table'],
        measured: -30,
        repairs: ['raise-shelf'],
        says: 'The open doors of the machine rise to 6′ 2″; the overshelf of the clean table is 1 ³⁄₁₆″ lower. Raise it, or take it away from over the machine.',
      },
    ],
  },
  {
    name: 'the same under the hood: raised it would meet the lip',
    plan: shelfOver(1650, true),
    expect: [{ ...machine, verdict: 'stop', subjects: ['machine', 'clean-table'], measured: -230 }],
  },
  {
    name: 'a shelf beside the machine is not over it',
    plan: linePlan({}, (plan) => addShelf(tableOf(plan, 'clean'), 0, 400, 1500)),
    expect: [{ ...machine, verdict: 'clear', measured: 633.6 }],
  },
  {
    name: 'a direct vent rises from its collar beside the doors, which rise to 1930; the run above is at 2511.1',
    plan: linePlan({ family: 'direct-vent' }),
    expect: [{ ...machine, verdict: 'clear', measured: 581.1 }],
  },
  {
    name: 'a run that turns forward over the doors, its underside at 1911.1',
    plan: linePlan({ family: 'direct-vent' }, (plan) => {
      runOf(plan).points = [
        { x: 4318.5, y: 288.5, z: 2600 },
        { x: 3800, y: 288.5, z: 2600 },
        { x: 3800, y: 600, z: 2600 },
        { x: 3800, y: 600, z: 2000 },
        { x: 4318.5, y: 600, z: 2000 },
      ];
    }),
    expect: [{ ...machine, verdict: 'stop', subjects: ['machine', 'run'], measured: -18.9 }],
  },
]);
