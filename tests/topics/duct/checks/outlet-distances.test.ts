import type { Opening } from '../../../../src/plan';
import { check } from '../../../../src/topics/duct/checks/outlet-distances';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { COLLAR, runPlan } from '../../../support/runPlans';

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
const wall = (verdict: ExpectedFinding['verdict'], away: number) => row(verdict, 'wall', away, 762);
const ground = (verdict: ExpectedFinding['verdict'], above: number | null) => row(verdict, 'ground', above, 10 * FOOT);
const roof = (verdict: ExpectedFinding['verdict'], above: number | null) => row(verdict, 'roof', above, 762);

/** The upper wall of the room lies on y = 0: the end of the run stands so far beyond it, at 3000 above the floor, beside one opening in it. */
const beside = (kind: Opening['kind'], { gap = 0, beyond = 400, height = 3000 - 1000 }, duct = {}) =>
  runPlan(
    [
      [0, 0, 1070],
      [0, -COLLAR.y - beyond, 0],
    ],
    { lineDistance: 10 * FOOT, intakeDistance: 10 * FOOT, aboveGround: 10 * FOOT, ...duct },
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
/** Straight up through the roof, with its end so far above it. */
const throughRoof = (aboveRoof: number | null) =>
  runPlan(
    [
      [0, 0, 0],
      [0, 0, 2000],
    ],
    { lineDistance: 10 * FOOT, intakeDistance: 10 * FOOT, aboveRoof },
    (plan) => {
      plan.room.openings = [];
      for (const run of plan.runs) run.outlet = 'roof';
    },
  );
const clear = [line('clear', 10 * FOOT), intake('clear', 10 * FOOT), ground('clear', 10 * FOOT)];

// IMC 506.4.2, restated: 3 ft from openings, 10 ft from the property line, from another building on the lot and from intakes, 30 in
// from outer walls, 10 ft above ground, 30 in above the roof.
describeCheck(check, [
  {
    name: 'a window 3 ft below its end',
    plan: beside('window', { height: 3000 - 1000 - 3 * FOOT, beyond: 1e-3 }),
    expect: [wall('stop', 1e-3), opening('clear', 3 * FOOT), ...clear],
  },
  {
    name: 'a window in the way: 3, 4 and 12 make 13',
    plan: beside('window', { gap: 300, beyond: 400, height: 3000 - 1000 - 1200 }),
    expect: [wall('stop', 400), opening('clear', 1300), ...clear],
  },
  {
    name: 'a window 400 mm away',
    plan: beside('window', {}),
    expect: [
      {
        ...opening('stop', 400),
        says: 'The outlet of the run is 1′ 3 ¾″ from a window, 1′ 8 ¼″ less than the 3′ 0″ that are asked. Let it end farther off.',
      },
      {
        ...wall('stop', 400),
        says: 'The outlet of the run is 1′ 3 ¾″ from the room’s side of the wall, 1′ 2 ¼″ less than the 2′ 6″ that are asked. Let it end farther off.',
      },
      ...clear,
    ],
  },
  { name: 'a door is an opening too', plan: beside('door', {}), expect: [opening('stop', 400), wall('stop', 400), ...clear] },
  { name: 'a pass window leads indoors', plan: beside('pass-window', { beyond: 762 }), expect: [wall('clear', 762), ...clear] },
  {
    name: 'the property line and an intake too near',
    plan: beside('pass-window', { beyond: 762 }, { lineDistance: 3000, intakeDistance: 2000 }),
    expect: [line('stop', 3000), intake('stop', 2000), wall('clear', 762), ground('clear', 10 * FOOT)],
  },
  {
    name: 'too near to the ground',
    plan: beside('pass-window', { beyond: 762 }, { aboveGround: 9 * FOOT }),
    expect: [
      {
        ...ground('stop', 9 * FOOT),
        says: 'The outlet of the run is 9′ 0″ above the ground, 1′ 0″ less than the 10′ 0″ that are asked. Let it end farther off.',
      },
      wall('clear', 762),
      line('clear', 10 * FOOT),
      intake('clear', 10 * FOOT),
    ],
  },
  {
    name: 'through the roof: no wall, and the height above the roof',
    plan: throughRoof(762),
    expect: [line('clear', 10 * FOOT), intake('clear', 10 * FOOT), roof('clear', 762)],
  },
  {
    name: 'too low above the roof',
    plan: throughRoof(700),
    expect: [roof('stop', 700), line('clear', 10 * FOOT), intake('clear', 10 * FOOT)],
  },
  {
    name: 'its height above the roof is not known',
    plan: throughRoof(null),
    expect: [
      {
        ...roof('ask', null),
        asks: 'runs.0.duct.aboveRoof',
        says: 'How far is the outlet of the run above the roof? At least 2′ 6″ is asked.',
      },
      line('clear', 10 * FOOT),
      intake('clear', 10 * FOOT),
    ],
  },
  {
    name: 'a run that ends in the room is before no outer wall',
    plan: beside('pass-window', { beyond: -100 }),
    expect: clear,
  },
  {
    name: 'none of them is known',
    plan: beside('pass-window', { beyond: 762 }, { lineDistance: null, intakeDistance: null, aboveGround: null }),
    expect: [
      {
        ...line('ask', null),
        asks: 'runs.0.duct.lineDistance',
        says: 'How far is the outlet of the run from the nearest property line or other building on the lot? At least 10′ 0″ is asked.',
      },
      { ...intake('ask', null), asks: 'runs.0.duct.intakeDistance' },
      { ...ground('ask', null), asks: 'runs.0.duct.aboveGround' },
      wall('clear', 762),
    ],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
