import { check } from '../../../../src/topics/duct/checks/run-drains';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runPlan } from '../../../support/runPlans';

const FALL = 1 / 48;
const sags = (verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  part: 'low-point',
  subjects: ['run', 'machine'],
  measured,
});
const falls = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  verdict,
  part: 'fall',
  subjects: ['run', 'machine'],
  measured,
  limit: FALL,
});

const RISES = [
  [0, 0, 700],
  [0, -2400, 50],
] as const;
const LEVEL = [
  [0, 0, 700],
  [0, -2400, 0],
] as const;
/** Up, down a little along the ceiling, then up through the roof. */
const SAGS = [
  [0, 0, 700],
  [0, -2400, -50],
  [0, 0, 1500],
] as const;
/** The same with a level stretch at its lowest. */
const TROUGH = [
  [0, 0, 700],
  [0, -1200, -50],
  [-1200, 0, 0],
  [0, 0, 1500],
] as const;
/** Up, then down to an end in the wall. */
const FALLS_OUT = [
  [0, 0, 700],
  [0, -2400, -50],
] as const;

// UFC 3-410-01FA 4-10.3: a drain line from the low point; ¼ in to a foot is usual, from memory.
describeCheck(check, [
  { name: 'rises ¼ in to a foot', plan: runPlan(RISES), expect: [sags('clear', true), falls('clear', FALL)] },
  { name: 'straight up has no leg that needs a fall', plan: runPlan([[0, 0, 2000]]), expect: [sags('clear', true)] },
  {
    name: 'lies level',
    plan: runPlan(LEVEL),
    expect: [
      {
        ...falls('watch', 0),
        repairs: ['pitch-run'],
        says: 'A leg of the run lies level; ¼″ per ft lets its water run. Let it rise from the collar on.',
      },
      sags('clear', true),
    ],
  },
  {
    name: 'rises too little',
    plan: runPlan([
      [0, 0, 700],
      [0, -2400, 20],
    ]),
    expect: [{ ...falls('watch', 20 / 2400), repairs: ['pitch-run'] }, sags('clear', true)],
  },
  { name: 'falls to its end, out in the open', plan: runPlan(FALLS_OUT), expect: [sags('clear', true), falls('clear', FALL)] },
  {
    name: 'sags before it goes up',
    plan: runPlan(SAGS, { lowPointDrain: false }),
    expect: [
      {
        ...sags('stop', false),
        repairs: ['add-low-point-drain'],
        says: 'The run sags at 8′ 5 ⁹⁄₁₆″ above the floor and has no drain there: water stands in it. Give it a drain line at its low point, or let it rise all the way.',
      },
      falls('clear', FALL),
    ],
  },
  { name: 'sags, and has its drain', plan: runPlan(SAGS, { lowPointDrain: true }), expect: [sags('clear', true), falls('clear', FALL)] },
  {
    name: 'sags, and whether it has a drain is not known',
    plan: runPlan(SAGS),
    expect: [{ ...sags('ask', null), asks: 'runs.0.duct.lowPointDrain' }, falls('clear', FALL)],
  },
  {
    name: 'a level trough sags once',
    plan: runPlan(TROUGH, { lowPointDrain: false }),
    expect: [
      { ...sags('stop', false), repairs: ['add-low-point-drain'] },
      { ...falls('watch', 0), repairs: ['pitch-run'] },
    ],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
