import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingsOf } from '../../src/figures';
import { rule } from '../../src/figures/rules/run-loss';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { describeFigure } from '../support/figureCases';
import { densityBy, lossBy, runPlan } from '../support/runPlans';

const subjects = ['run', 'machine'];
const UP = [[0, 0, 10_000]] as const;
const TURNS = [
  [0, 0, 1000],
  [0, -2000, 0],
  [0, 0, 1000],
] as const;

const AREA = Math.PI * 0.0889 ** 2;
const VP = (densityBy(35, 0.7, 100) * (0.2 / AREA) ** 2) / 2;
/** Entry 0.57 (Rennels, A-X5, read); open end 1.0 (A-X8, read) and 0.25 of a cap (A-X9, secondary). */
const [ENTRY, OPEN, CAPPED] = [0.57, 1, 1.25];
/** Mitred bend of 90°: 1.20208153 (A-B14, read). */
const MITRED = 1.20208153;

const straight = (length: number) => lossBy({ airflow: 0.2, diameter: 0.1778, length, coefficients: 0 });
const parts = (length: number, bends: number, exit: number) => [
  { part: 'whole', subjects, value: straight(length) + (bends + ENTRY + exit) * VP, within: 0.05 },
  { part: 'straight', subjects, value: straight(length), within: 0.05 },
  { part: 'bends', subjects, value: bends * VP, within: 0.01 },
  { part: 'entry', subjects, value: ENTRY * VP, within: 0.01, notes: 'flush' },
  { part: 'exit', subjects, value: exit * VP, within: 0.01 },
];

/** One smooth bend of r/D 1.5 at f 0.0202 by hand: (0.10 + 2.4 f) sin 45° + 6.6 f (√sin 45° + sin 45°) / 1.5². */
const F = 0.020_2;
const HALF = Math.SQRT1_2;
const ROUNDED = (0.1 + 2.4 * F) * HALF + (6.6 * F * (Math.sqrt(HALF) + HALF)) / 1.5 ** 2;

describeFigure(rule, [
  { name: '10 m straight up, capped', plan: runPlan(UP), expect: parts(10, 0, CAPPED) },
  { name: '10 m straight up, open', plan: runPlan(UP, { cap: 'none' }), expect: parts(10, 0, OPEN) },
  { name: '10 m straight up asks for no radius', plan: runPlan(UP, { bendRadius: null }), expect: parts(10, 0, CAPPED) },
  { name: 'two mitred bends', plan: runPlan(TURNS, { bendRadius: 0 }), expect: parts(4, 2 * MITRED, CAPPED) },
  {
    name: 'two smooth bends',
    plan: runPlan(TURNS),
    expect: parts(4, 2 * ROUNDED, CAPPED).map((row) => ({ ...row, within: 0.05 })),
  },
  {
    name: 'a square duct of 0.16 m: bends of the table, 0.17 each (A-B10, secondary)',
    plan: runPlan(TURNS, { sides: { width: 160, height: 160 } }),
    expect: squareParts(),
  },
  {
    name: 'radius of the bends not known',
    plan: runPlan(TURNS, { bendRadius: null }),
    expect: [{ part: 'whole', subjects, value: null, asks: 'runs.0.duct.bendRadius' }],
  },
  {
    name: 'cap not known',
    plan: runPlan(UP, { cap: null }),
    expect: [{ part: 'whole', subjects, value: null, asks: 'runs.0.duct.cap' }],
  },
  {
    name: 'a bend of a radius between mitred and half a diameter',
    plan: runPlan(TURNS, { bendRadius: 0.3 }),
    expect: [{ part: 'whole', subjects, value: null, refuses: 'radiusRatio is 0.3' }],
  },
]);

function squareParts() {
  const velocityPressure = (densityBy(35, 0.7, 100) * (0.2 / 0.16 ** 2) ** 2) / 2;
  // Huebscher: 1.30 (0.0256)^0.625 / 0.32^0.25.
  const equal = (1.3 * 0.0256 ** 0.625) / 0.32 ** 0.25;
  const rubbing = lossBy({ airflow: 0.2, diameter: equal, length: 4, coefficients: 0 });
  const row = (part: string, value: number) => ({ part, subjects, value, within: 0.05 });
  return [
    row('whole', rubbing + (0.34 + ENTRY + CAPPED) * velocityPressure),
    row('straight', rubbing),
    row('bends', 0.34 * velocityPressure),
    row('entry', ENTRY * velocityPressure),
    row('exit', CAPPED * velocityPressure),
  ];
}

describe('the loss of a run', () => {
  const wholeOf = (plan: Plan) => readingsOf(deriveScene(plan), 'run-loss')[0]?.value ?? Number.NaN;
  const more = (a: Plan, b: Plan) => expect(wholeOf(b)).toBeGreaterThan(wholeOf(a));

  it('grows with length, airflow and sharper bends, and falls with warmer air', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 20_000 }), fc.double({ min: 0.2, max: 0.8, noNaN: true }), (rise, airflow) => {
        const run = [
          [0, 0, rise],
          [0, -2000, 0],
        ] as const;
        more(
          runPlan(run, { airflow }),
          runPlan(
            [
              [0, 0, rise + 100],
              [0, -2000, 0],
            ],
            { airflow },
          ),
        );
        more(runPlan(run, { airflow }), runPlan(run, { airflow: airflow * 1.05 }));
        more(runPlan(run, { airflow, bendRadius: 2 }), runPlan(run, { airflow, bendRadius: 1 }));
        more(runPlan(run, { airflow, exhaustC: 50 }), runPlan(run, { airflow, exhaustC: 20 }));
      }),
      { numRuns: 25 },
    );
  });
});
