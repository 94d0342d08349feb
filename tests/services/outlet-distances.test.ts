import type { Opening } from '../../src/plan';
import { check } from '../../src/services/rules/outlet-distances';
import { describeCheck, type ExpectedFinding } from '../support/cases';
import { linePlan } from '../support/linePlan';
import { COLLAR, runPlan } from '../support/runPlans';

const FOOT = 304.8;
const row = (verdict: ExpectedFinding['verdict'], part: string, measured: number | null, limit: number): ExpectedFinding => ({
  verdict,
  part,
  subjects: ['run', 'machine'],
  measured,
  limit,
});
const opening = (verdict: ExpectedFinding['verdict'], away: number) => row(verdict, 'opening', away, 3 * FOOT);
const line = (verdict: ExpectedFinding['verdict'], away: number | null) => row(verdict, 'line', away, 10 * FOOT);
const intake = (verdict: ExpectedFinding['verdict'], away: number | null) => row(verdict, 'intake', away, 10 * FOOT);

/** The upper wall of the room lies on y = 0: the end of the run stands so far beyond it, at 3000 above the floor, beside one opening in it. */
const beside = (kind: Opening['kind'], { gap = 0, beyond = 400, height = 3000 - 1000 }, duct = {}) =>
  runPlan(
    [
      [0, 0, 1070],
      [0, -COLLAR.y - beyond, 0],
    ],
    { lineDistance: 10 * FOOT, intakeDistance: 10 * FOOT, ...duct },
    (plan) => {
      const [corner] = plan.room.outline;
      plan.room.openings = [
        {
          id: 'opening',
          kind,
          wall: corner?.id ?? '',
          from: COLLAR.x - gap - 500,
          width: 500,
          height,
          sill: 1000,
          swing: 'none',
          hinge: 'start',
        },
      ];
    },
  );
const clear = [line('clear', 10 * FOOT), intake('clear', 10 * FOOT)];

// IMC 506.4.2, restated: 3 ft from openings, 10 ft from the property line and from intakes.
describeCheck(check, [
  {
    name: 'a window 3 ft below its end',
    plan: beside('window', { height: 3000 - 1000 - 3 * FOOT, beyond: 1e-3 }),
    expect: [opening('clear', 3 * FOOT), ...clear],
  },
  {
    name: 'a window in the way: 3, 4 and 12 make 13',
    plan: beside('window', { gap: 300, beyond: 400, height: 3000 - 1000 - 1200 }),
    expect: [opening('clear', 1300), ...clear],
  },
  {
    name: 'a window 400 mm away',
    plan: beside('window', {}),
    expect: [
      {
        ...opening('stop', 400),
        says: 'The outlet of the run is 1′ 3 ¾″ from a window, 1′ 8 ¼″ less than the 3′ 0″ that are asked. Let it end farther off.',
      },
      ...clear,
    ],
  },
  { name: 'a door is an opening too', plan: beside('door', {}), expect: [opening('stop', 400), ...clear] },
  { name: 'a pass window leads indoors', plan: beside('pass-window', {}), expect: clear },
  {
    name: 'the property line and an intake too near',
    plan: beside('pass-window', {}, { lineDistance: 3000, intakeDistance: 2000 }),
    expect: [line('stop', 3000), intake('stop', 2000)],
  },
  {
    name: 'neither is known',
    plan: beside('pass-window', {}, { lineDistance: null, intakeDistance: null }),
    expect: [
      {
        ...line('ask', null),
        asks: 'runs.0.duct.lineDistance',
        says: 'How far is the outlet of the run from the nearest property line? At least 10′ 0″ is asked.',
      },
      { ...intake('ask', null), asks: 'runs.0.duct.intakeDistance' },
    ],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
